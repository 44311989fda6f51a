package org.hearthrule.page.frame;

import io.javalin.http.Context;

/** What every answer tells the browser: nothing from elsewhere, nothing inline, in no frame, kept nowhere. */
final class Headers {

    private static final String POLICY = "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; "
            + "connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    private Headers() { }

    static void set(Context call) {
        call.header("Content-Security-Policy", POLICY);
        call.header("X-Content-Type-Options", "nosniff");
        call.header("X-Frame-Options", "DENY");
        call.header("Referrer-Policy", "no-referrer");
        call.header("Cross-Origin-Opener-Policy", "same-origin");
        call.header("Cross-Origin-Resource-Policy", "same-origin");
        call.header("Permissions-Policy", "camera=(), geolocation=(), microphone=()");
        call.header("Cache-Control", "no-store");
    }
}
