package org.hearthrule.page.frame;

import io.javalin.http.Context;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Stands at the door. Another program, another page in the same browser, or another machine is not let in:
 * the host is compared with an exact set before anything else (so that a name that was made to point at this machine is
 * no way in), looking needs the cookie that a start address sets once, and a change needs the token of this run and must
 * come from this page itself.
 */
public final class Guard {

    private static final Set<String> LOOKING = Set.of("GET", "HEAD");
    private static final Set<String> OWN_OR_TYPED = Set.of("same-origin", "none");

    private final Secret cookie = Secret.fresh();
    private final Secret token = Secret.fresh();
    private final AtomicReference<Secret> start = new AtomicReference<>(Secret.fresh());

    /** What the guard says to a call. */
    public enum Word { COME_IN, WRONG_HOST, WRONG_METHOD, FOREIGN, NO_COOKIE }

    /** @return the token that stands in each form */
    public String token() {
        return token.word();
    }

    /** @return a new address to start at; good for one use, and the end of the one before */
    public String newStart(int port) {
        Secret fresh = Secret.fresh();
        start.set(fresh);
        return "http://127.0.0.1:" + port + "/start/" + fresh.word();
    }

    /** @return whether the word is that of the start address, which then is good no longer */
    boolean start(String word) {
        Secret expected = start.get();
        return expected != null && expected.is(word) && start.compareAndSet(expected, null);
    }

    /** The cookie's name tells the port: cookies of one host are shared by all of its ports. */
    static String cookieName(int port) {
        return "hearthrule-" + port;
    }

    String setCookie(int port) {
        return cookieName(port) + '=' + cookie.word() + "; Path=/; HttpOnly; SameSite=Strict";
    }

    boolean knows(Context call, int port) {
        return cookie.is(call.cookie(cookieName(port)));
    }

    /** @return what is said before the address is even looked at */
    Word atTheDoor(Context call, int port) {
        String host = call.req().getHeader("Host");
        if (host == null || !hosts(port).contains(host)) {
            return Word.WRONG_HOST;
        }
        String method = call.req().getMethod();
        if (!LOOKING.contains(method) && !method.equals("POST")) {
            return Word.WRONG_METHOD;
        }
        return Word.COME_IN;
    }

    /** @return what is said to whoever wants to look at a page of the book */
    Word forLooking(Context call, int port) {
        String site = call.req().getHeader("Sec-Fetch-Site");
        if (site != null && !OWN_OR_TYPED.contains(site)) {
            return Word.FOREIGN;
        }
        return knows(call, port) ? Word.COME_IN : Word.NO_COOKIE;
    }

    /** @return what is said to whoever wants to change something, before the form is read */
    Word forChanging(Context call, int port) {
        String site = call.req().getHeader("Sec-Fetch-Site");
        String origin = call.req().getHeader("Origin");
        // a form of a page that tells nobody where it was sent from has the origin "null"; its site is still told
        boolean ownOrigin = origin == null || origin.equals("null") && site != null
                || hosts(port).stream().anyMatch(host -> origin.equals("http://" + host));
        if (site != null && !site.equals("same-origin") || !ownOrigin) {
            return Word.FOREIGN;
        }
        return knows(call, port) ? Word.COME_IN : Word.NO_COOKIE;
    }

    /** @return whether a form holds the token of this run */
    boolean isOurForm(String sent) {
        return token.is(sent);
    }

    private static List<String> hosts(int port) {
        return List.of("127.0.0.1:" + port, "localhost:" + port);
    }
}
