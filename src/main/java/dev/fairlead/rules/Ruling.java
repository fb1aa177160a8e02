package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Limit;
import dev.fairlead.model.Measured;
import java.io.ByteArrayOutputStream;
import java.io.DataInput;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * How the engine ended a criterion at one place, without the values of that place: it holds for every fact with the
 * same answers.
 */
final class Ruling {
    /** One verdict; the values that it shows stand at these components. */
    private record Said(Outcome outcome, String reason, Limit[] limits, int[] components) {}

    private final Criterion criterion;
    private final Status status;
    private final Ending ending;
    private final Said[] said;

    private Ruling(Criterion criterion, Status status, Ending ending, Said[] said) {
        this.criterion = criterion;
        this.status = status;
        this.ending = ending;
        this.said = said;
    }

    /** What can be kept of a result; null when a value that it shows cannot be told from another of the same fact. */
    static Ruling of(Criterion criterion, PlaceResult result, Limits limits) {
        CaseValue[] fact = result.fact().components();
        List<Said> all = new ArrayList<>();
        for (Verdict v : result.verdicts()) {
            Limit[] held = new Limit[v.seen().size()];
            int[] at = new int[held.length];
            for (int i = 0; i < held.length; i++) {
                held[i] = limits.of(v.seen().get(i).limit());
                at[i] = v.shown(i) != null
                        ? Need.of(criterion.about(), v.shown(i)).at()
                        : only(v.seen().get(i).value(), fact);
                if (at[i] < 0 || fact[at[i]] != v.seen().get(i).value()) {
                    return null;
                }
            }
            all.add(new Said(v.outcome(), v.reason(), held, at));
        }
        return new Ruling(criterion, result.status(), Ending.of(result), all.toArray(Said[]::new));
    }

    /** Without the values of thresholds, which are looked up again by {@link #read}. */
    byte[] bytes() throws IOException {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(all);
        out.writeByte(status.ordinal());
        out.writeByte(ending.ordinal());
        out.writeByte(said.length);
        for (Said s : said) {
            out.writeByte(s.outcome.ordinal());
            out.writeUTF(s.reason);
            out.writeByte(s.limits.length);
            for (int i = 0; i < s.limits.length; i++) {
                out.writeUTF(s.limits[i].name());
                out.writeByte(s.components[i]);
            }
        }
        return all.toByteArray();
    }

    static Ruling read(DataInput in, Criterion criterion, Limits limits) throws IOException {
        Status status = Status.values()[in.readByte()];
        Ending ending = Ending.values()[in.readByte()];
        Said[] said = new Said[in.readByte()];
        for (int k = 0; k < said.length; k++) {
            Outcome outcome = Outcome.values()[in.readByte()];
            String reason = in.readUTF();
            Limit[] held = new Limit[in.readByte()];
            int[] at = new int[held.length];
            for (int i = 0; i < held.length; i++) {
                held[i] = limits.of(in.readUTF());
                at[i] = in.readByte();
            }
            said[k] = new Said(outcome, reason, held, at);
        }
        return new Ruling(criterion, status, ending, said);
    }

    private static int only(Measured value, CaseValue[] fact) {
        int found = -1;
        for (int i = 0; i < fact.length; i++) {
            if (fact[i] == value) {
                found = found == -1 ? i : -2;
            }
        }
        return found;
    }

    Ending ending() {
        return ending;
    }

    /** False for a value in another unit than its limit, of which the engine's way makes an error. */
    boolean fits(CaseValue[] fact) {
        for (Said s : said) {
            for (int i = 0; i < s.components.length; i++) {
                if (!FillIn.comparable(((Measured) fact[s.components[i]]).unit(), s.limits[i].unit())) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The result at the place of {@code fact}, whose components are {@code parts}. */
    PlaceResult at(CaseFact fact, CaseValue[] parts, int[] needs) {
        if (said.length == 0) {
            return new PlaceResult(fact.place(), fact, status, List.of(), missing(parts, needs));
        }
        if (said.length == 1) {
            return new PlaceResult(fact.place(), fact, status, List.of(verdict(said[0], fact, parts)), List.of());
        }
        List<Verdict> verdicts = new ArrayList<>(said.length);
        for (Said s : said) {
            verdicts.add(verdict(s, fact, parts));
        }
        return new PlaceResult(fact.place(), fact, status, verdicts, List.of());
    }

    private Verdict verdict(Said s, CaseFact fact, CaseValue[] parts) {
        Verdict verdict = new Verdict(criterion.id(), fact, s.outcome, s.reason);
        for (int i = 0; i < s.components.length; i++) {
            verdict.seen(s.limits[i].name(), (Measured) parts[s.components[i]]);
        }
        return verdict;
    }

    /** What is missing at the place of a fact with these components; nothing where a rule has decided. */
    List<String> missing(CaseValue[] parts, int[] needs) {
        if (said.length > 0) {
            return List.of();
        }
        List<String> first = null;
        List<String> all = null;
        for (int at : needs) {
            List<String> here = parts[at].missing();
            if (first == null && here.size() == 1) {
                first = here;
            } else if (!here.isEmpty()) {
                all = all != null ? all : new ArrayList<>(first == null ? List.of() : first);
                first = here;
                for (String pointer : here) {
                    if (!all.contains(pointer)) {
                        all.add(pointer);
                    }
                }
            }
        }
        return all != null ? all : first != null ? first : List.of();
    }
}
