package dev.fairlead.web.page;

import dev.fairlead.model.Choices.Role;
import dev.fairlead.web.access.Session;
import java.util.Arrays;
import java.util.List;

/**
 * What stands around every page.
 *
 * @param title of the page, for the window and the heading of the browser's history
 * @param where which entry of the main navigation is current: {@code cases}, {@code book} or empty
 * @param folder name of the folder of cases
 * @param assets hash of styles and scripts, so that a browser never mixes old and new
 * @param shared whether devices of the network are answered
 * @param session of the browser that asked
 * @param path of the page, to come back to
 */
public record PageFrame(
        String title, String where, String folder, String assets, boolean shared, Session session, String path) {
    /** True where the page of devices is of use to whoever looks. */
    public boolean devices() {
        return shared && session.role().mayPair();
    }

    /** Roles in which a person may work here. */
    public List<String> roles() {
        return roles(session);
    }

    static List<String> roles(Session session) {
        return Arrays.stream(Role.values())
                .filter(session.role()::maySignAs)
                .map(Role::word)
                .toList();
    }
}
