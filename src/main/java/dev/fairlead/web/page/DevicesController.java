package dev.fairlead.web.page;

import dev.fairlead.model.Choices.Role;
import dev.fairlead.web.access.Access;
import dev.fairlead.web.access.DeviceRole;
import dev.fairlead.web.access.Pairing;
import dev.fairlead.web.access.Session;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.nayuki.qrcodegen.QrCode;
import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Devices of the network: let in by a code, seen in a list, sent away; and who works on the device at hand. */
public final class DevicesController {
    private static final int MOST_NAME = 40;

    private final Site site;
    private final Access access;

    DevicesController(Site site) {
        this.site = site;
        access = site.access();
    }

    void install(RoutesConfig routes) {
        routes.get("/devices", this::show);
        routes.post("/devices", this::offer);
        routes.post("/devices/revoke", this::revoke);
        routes.get("/pair", ctx -> pair(ctx, ""));
        routes.post("/pair", this::take);
        routes.post("/who", this::who);
    }

    private void show(Context ctx) {
        allowed(ctx);
        Map<String, Object> model = new HashMap<>();
        model.put("access", access);
        model.put("roles", DeviceRole.values());
        model.put("offer", access.pairing().waiting().orElse(null));
        model.put(
                "minutes",
                access.pairing()
                        .waiting()
                        .map(o -> (Instant.now().until(o.until(), java.time.temporal.ChronoUnit.SECONDS) + 59) / 60)
                        .orElse(0L));
        site.views().page(ctx, "web/devices.jte", "Devices", "devices", model);
    }

    private void offer(Context ctx) {
        Session own = allowed(ctx);
        String name = text(ctx, "name");
        DeviceRole role = Arrays.stream(DeviceRole.values())
                .filter(r -> r.word().equals(text(ctx, "role")))
                .findFirst()
                .orElse(DeviceRole.READER);
        if (!access.shared() || name.isEmpty() || name.length() > MOST_NAME) {
            throw new PageError(
                    422,
                    "The device was not named",
                    "Give it a name of up to " + MOST_NAME + " letters, such as Chair 2.");
        }
        if (role.compareTo(own.role()) > 0) {
            throw new PageError(403, "A device cannot be given more than you may do yourself", "Choose another role.");
        }
        if (access.pairing().offer(name, role).isEmpty()) {
            throw new PageError(
                    429,
                    "Pairing is locked after several wrong codes",
                    "Somebody typed wrong codes. Wait a quarter of an hour, then ask for a new code.");
        }
        ctx.redirect("/devices", HttpStatus.SEE_OTHER);
    }

    private void revoke(Context ctx) {
        allowed(ctx);
        access.sessions().revoke(text(ctx, "id"));
        ctx.redirect("/devices", HttpStatus.SEE_OTHER);
    }

    private void pair(Context ctx, String refused) {
        String code = Objects.requireNonNullElse(ctx.queryParam("code"), "");
        site.views()
                .part(
                        ctx,
                        "web/pair.jte",
                        Map.of(
                                "refused",
                                refused,
                                "code",
                                code.matches("[0-9]{6}") ? code : "",
                                "assets",
                                site.views().assets()));
    }

    private void take(Context ctx) {
        if (!access.shared()) {
            throw new PageError(404, "There is no such page", "Start the server with --share to pair devices.");
        }
        Pairing.Answer answer = access.pairing().take(text(ctx, "code"));
        if (answer.offer().isEmpty()) {
            pair(ctx.status(429), answer.refused());
            return;
        }
        Pairing.Offer offer = answer.offer().get();
        Visitor.let(ctx, access.sessions().pair(offer.name(), offer.role()), true, true);
        ctx.redirect("/cases", HttpStatus.SEE_OTHER);
    }

    private void who(Context ctx) {
        Session own = Visitor.known(ctx);
        String initials = text(ctx, "initials").toUpperCase(Locale.ROOT);
        Role role = role(text(ctx, "role"));
        if (role == null || !initials.matches("[A-Z]{2,3}")) {
            throw new PageError(
                    422, "Role and initials are needed", "Choose a role, and type two or three letters as initials.");
        }
        if (!own.role().maySignAs(role)) {
            throw new PageError(
                    403,
                    "From this device nobody works as " + role.word(),
                    "Choose a role that the device was paired for.");
        }
        access.sessions().says(own.id(), role.word() + " " + initials);
        String back = text(ctx, "back");
        ctx.redirect(back.matches("/[A-Za-z0-9].*") ? back : "/cases", HttpStatus.SEE_OTHER);
    }

    /** The role of that word; null when there is none. */
    static @Nullable Role role(String word) {
        return Arrays.stream(Role.values())
                .filter(r -> r.word().equals(word))
                .findFirst()
                .orElse(null);
    }

    private static Session allowed(Context ctx) {
        Session own = Visitor.known(ctx);
        if (!own.role().mayPair()) {
            throw new PageError(
                    403, "Devices are let in by a clinician or director", "Ask one of them to open this page.");
        }
        return own;
    }

    private static String text(Context ctx, String key) {
        return Objects.requireNonNullElse(ctx.formParam(key), "").strip();
    }

    /** A text as the path of a QR code (ISO/IEC 18004), one unit a module with the quiet zone around. */
    public static String path(String text) {
        QrCode code = QrCode.encodeText(text, QrCode.Ecc.MEDIUM);
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < code.size; y++) {
            for (int x = 0; x < code.size; x++) {
                if (code.getModule(x, y)) {
                    path.append('M').append(x + 4).append(' ').append(y + 4).append("h1v1h-1z");
                }
            }
        }
        return path.toString();
    }

    /** Modules along a side of that code, with the quiet zone. */
    public static int size(String text) {
        return QrCode.encodeText(text, QrCode.Ecc.MEDIUM).size + 8;
    }
}
