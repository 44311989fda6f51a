package org.hearthrule.page.frame;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hearthrule.input.BadInputException;

/** Lets calls in, hands them to the features and sends what these answer. */
public final class Door {

    private static final String CALL_FORWARD = "hearthrule.in";

    private final House house;
    private final Guard guard = new Guard();
    private final Assets assets = new Assets();
    private final Renderer renderer = new Renderer();
    private volatile int port;

    public Door(House house) {
        this.house = house;
    }

    /** Tells the port, which is known only when the server has started. */
    public void listensOn(int number) {
        port = number;
    }

    public String newStartAddress() {
        return guard.newStart(port);
    }

    /** Sets up everything the server needs. */
    public void open(JavalinConfig config, List<Feature> features) {
        config.routes.before(this::atTheDoor);
        config.routes.get("/start/{word}", this::start);
        config.routes.get("/assets/{name}", this::asset);
        config.routes.get("/", call -> call.redirect(house.hasBook() ? "/checklist" : "/welcome"));
        Routes routes = new RoutesOfServer(config);
        features.forEach(feature -> feature.addTo(routes));
        config.routes.post("/undo", call -> change(call, Undo::undo, true));
        config.routes.post("/redo", call -> change(call, Undo::redo, true));
        config.routes.exception(Exception.class, this::mishap);
        config.routes.error(404, call -> {
            if (call.attribute(CALL_FORWARD) != null) {
                plain(call, 404, "nowhere");
            }
        });
    }

    private void atTheDoor(Context call) {
        Headers.set(call);
        Guard.Word word = guard.atTheDoor(call, port);
        boolean open = call.path().startsWith("/start/") || CalendarKey.isItsPath(call.path());
        if (word == Guard.Word.COME_IN && !open) {
            boolean change = call.req().getMethod().equals("POST");
            word = change ? guard.forChanging(call, port) : guard.forLooking(call, port);
        }
        if (word == Guard.Word.COME_IN) {
            call.attribute(CALL_FORWARD, Boolean.TRUE);
            return;
        }
        refuse(call, word);
        call.skipRemainingHandlers();
    }

    private static void refuse(Context call, Guard.Word word) {
        int status = switch (word) {
            case WRONG_HOST -> 421;
            case WRONG_METHOD -> 405;
            default -> 403;
        };
        String said = switch (word) {
            case WRONG_HOST -> "This page answers only to its own address on this machine.";
            case WRONG_METHOD -> "This page is only looked at and sent forms.";
            case FOREIGN -> "This came from another page, so it was not done.";
            default -> "This page opens with the address that `hearthrule open` printed. "
                    + "It is good for one use: for another, press Enter where Hearthrule was started.";
        };
        call.status(status).contentType("text/plain; charset=utf-8").result(said + '\n');
    }

    private void start(Context call) {
        if (guard.start(call.pathParam("word"))) {
            call.res().addHeader("Set-Cookie", guard.setCookie(port));
            call.redirect("/");
        } else if (guard.knows(call, port)) {
            call.redirect("/");
        } else {
            refuse(call, Guard.Word.NO_COOKIE);
        }
    }

    private void asset(Context call) {
        String name = call.pathParam("name");
        byte[] content = assets.content(name).orElse(null);
        if (content == null) {
            plain(call, 404, "nowhere");
            return;
        }
        // a new version has a new address
        call.header("Cache-Control", "private, max-age=31536000, immutable");
        call.contentType(assets.type(name)).result(content);
    }

    private final class RoutesOfServer implements Routes {
        private final JavalinConfig config;

        RoutesOfServer(JavalinConfig config) {
            this.config = config;
        }

        @Override
        public void get(String path, Handler handler) {
            config.routes.get(path, call -> answer(call, handler, true));
        }

        @Override
        public void getWithoutBook(String path, Handler handler) {
            config.routes.get(path, call -> answer(call, handler, false));
        }

        @Override
        public void post(String path, Handler handler) {
            config.routes.post(path, call -> change(call, handler, true));
        }

        @Override
        public void postWithoutBook(String path, Handler handler) {
            config.routes.post(path, call -> change(call, handler, false));
        }
    }

    private void change(Context context, Handler handler, boolean needsBook) throws Exception {
        if (guard.isOurForm(context.formParam("token"))) {
            answer(context, handler, needsBook);
        } else {
            plain(context, 403, "no-token");
        }
    }

    private void answer(Context context, Handler handler, boolean needsBook) throws Exception {
        if (needsBook && !house.hasBook()) {
            context.redirect("/welcome");
        } else {
            send(context, new Call(context, house), handler);
        }
    }

    private void send(Context context, Call call, Handler handler) throws Exception {
        Answer answer;
        try {
            answer = handler.answer(call);
        } catch (BadInputException e) {
            answer = Answer.again("frame/problems.jte", "Something must be put right", null,
                    Map.of("problems", e.problems(), "back", call.here()));
        }
        if (answer instanceof Answer.Shown shown) {
            context.status(shown.status()).html(page(shown, call.here()));
        } else if (answer instanceof Answer.Fragment fragment) {
            context.html(renderer.set(fragment.template(), fragment.values()));
        } else if (answer instanceof Answer.Elsewhere elsewhere) {
            if (elsewhere.notice() != null) {
                house.tell(elsewhere.notice());
            }
            context.redirect(elsewhere.path(), io.javalin.http.HttpStatus.SEE_OTHER);
        } else if (answer instanceof Answer.Download download) {
            context.header("Content-Disposition", "attachment; filename=\"" + plainName(download.name()) + '"');
            context.contentType(download.type());
            download.body().write(context.outputStream());
        } else if (answer instanceof Answer.Inline inline) {
            context.header("Content-Disposition", "inline");
            context.header("Cache-Control", "private, max-age=3600");
            context.contentType(inline.type());
            inline.body().write(context.outputStream());
        } else {
            plain(context, 404, "nowhere");
        }
    }

    private static String plainName(String name) {
        return name.replaceAll("[^A-Za-z0-9._-]", "-");
    }

    private String page(Answer.Shown shown, String here) {
        Map<String, Object> values = new HashMap<>(shown.values());
        values.put("frame", frame(shown.title(), shown.part(), here));
        return renderer.set(shown.template(), values);
    }

    private Frame frame(String title, Part part, String here) {
        boolean book = house.hasBook();
        Desk desk = house.desk();
        return new Frame(title, part, here, house.familyName(), guard.token(), house.takeNotice().orElse(null),
                book ? desk.undoable().orElse(null) : null, book ? desk.redoable().orElse(null) : null, house.inDemo(),
                book, book && desk.isUnreadable(), desk.today(), desk.isAsOf(), assets.version());
    }

    /** Says in a page of the house why there is nothing to see. */
    private void plain(Context context, int status, String what) {
        String title = status == 404 ? "Nothing here" : "Something went wrong";
        Answer.Shown shown = new Answer.Shown("frame/plain.jte", title, null, Map.of("what", what), status);
        context.status(status).html(page(shown, "/"));
    }

    private void mishap(Exception e, Context context) {
        if (TooLarge.is(e)) {
            plain(context, 413, "too-large");
        } else {
            plain(context, 500, "mishap");
        }
    }
}
