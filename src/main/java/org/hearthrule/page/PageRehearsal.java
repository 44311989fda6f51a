package org.hearthrule.page;

import java.net.URI;
import java.util.List;
import org.eclipse.jetty.server.LocalConnector;
import org.eclipse.jetty.server.Server;
import org.hearthrule.page.frame.Settings;

/**
 * Answers what a browser calls first, so that a class-data archive made meanwhile holds what that needs. The calls come
 * from within the process, past the network.
 */
public final class PageRehearsal {

    private static final List<String> FIRST = List.of("/", "/checklist", "/assets/frame.css", "/log", "/year",
            "/records", "/readiness", "/family", "/law");
    private static final String COOKIE = "Set-Cookie: ";

    private PageRehearsal() { }

    /** @param settings with a book in its folder, and any port */
    public static void of(Settings settings) throws Exception {
        try (PageServer page = PageServer.start(settings)) {
            Server server = page.jetty();
            LocalConnector inside = new LocalConnector(server);
            server.addConnector(inside);
            inside.start();
            String head = " HTTP/1.1\r\nHost: 127.0.0.1:" + page.port() + "\r\nConnection: close\r\n";
            String entered = inside.getResponse("GET " + URI.create(page.newStartAddress()).getPath() + head + "\r\n");
            int cookie = entered.indexOf(COOKIE) + COOKIE.length();
            String known = head + "Cookie: " + entered.substring(cookie, entered.indexOf(';', cookie)) + "\r\n\r\n";
            for (String path : FIRST) {
                inside.getResponse("GET " + path + known);
            }
        }
    }
}
