package dev.fairlead.web.edit;

import dev.fairlead.intake.tree.CaseTree;
import java.util.List;
import java.util.Set;

/** The signature under the answers at the chair: it holds for the answers that stood there when it was given. */
public final class Signature {
    public static final String ROLE = "/insertion/answeredBy";
    public static final String INITIALS = "/insertion/initials";
    public static final String TIME = "/insertion/time";
    public static final String DAY = "/insertion/date";

    /** What the log says of a change that ended a signature. */
    public static final String VOIDED = "ended the signature";

    private static final Set<String> OWN = Set.of(ROLE, INITIALS, TIME, DAY);

    private Signature() {}

    /** True when a change of those facts leaves nothing of the signature that the case had. */
    static boolean voided(Opened present, List<String> changed) {
        return !present.typed(ROLE).isEmpty()
                && changed.stream().anyMatch(p -> p.startsWith("/insertion/") && !OWN.contains(p))
                && changed.stream().noneMatch(p -> p.equals(ROLE) || p.equals(INITIALS) || p.equals(TIME));
    }

    /** Takes the signature out; the day of insertion stays, for it is a fact of its own. */
    static void remove(CaseTree tree) {
        List.of(ROLE, INITIALS, TIME).forEach(tree::remove);
    }
}
