package dev.fairlead.rules;

import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Limit;
import java.util.BitSet;
import java.util.List;

/**
 * All that a criterion can tell one fact of its type from another by: the conditions that its rules put on it, and
 * which of its needs are known and apply. Two facts with the same answers end alike.
 */
final class Asked {
    private final Term.Kind[] kinds;
    private final Limit[] limits;
    private final int[] conditionAt;
    private final int[] needAt;
    private final boolean answerable;

    Asked(Criterion criterion, List<Term> conditions, Limits inForce) {
        kinds = new Term.Kind[conditions.size()];
        limits = new Limit[kinds.length];
        conditionAt = new int[kinds.length];
        for (int i = 0; i < kinds.length; i++) {
            Term t = conditions.get(i);
            kinds[i] = t.kind();
            limits[i] = inForce.all().get(t.limit());
            conditionAt[i] = t.need().at();
        }
        needAt = new int[criterion.needs().size()];
        for (int i = 0; i < needAt.length; i++) {
            needAt[i] = criterion.needs().get(i).at();
        }
        boolean all = true;
        for (int i = 0; i < kinds.length; i++) {
            all &= limits[i] != null || !kinds[i].compares();
        }
        answerable = all;
    }

    /** False where a threshold is not there: the engine alone says what becomes of that. */
    boolean answerable() {
        return answerable;
    }

    /** Components that the criterion needs, by their number in {@link dev.fairlead.facts.CaseFact#components}. */
    int[] needs() {
        return needAt;
    }

    /** True where the answers do not fit into 64 bits. */
    boolean wide() {
        return kinds.length + 2 * needAt.length > Long.SIZE;
    }

    /** The answers for one fact as bits; {@code states} are those of its components. */
    long answers(CaseValue[] fact, byte[] states) {
        long mask = 0;
        for (int i = 0; i < kinds.length; i++) {
            mask = mask << 1 | (Term.holds(kinds[i], fact[conditionAt[i]], limits[i]) ? 1 : 0);
        }
        for (int at : needAt) {
            mask = mask << 2 | states[at];
        }
        return mask;
    }

    /** The same where the answers are many. */
    BitSet manyAnswers(CaseValue[] fact) {
        BitSet mask = new BitSet();
        int bit = 0;
        for (int i = 0; i < kinds.length; i++) {
            mask.set(bit++, Term.holds(kinds[i], fact[conditionAt[i]], limits[i]));
        }
        for (int at : needAt) {
            mask.set(bit++, fact[at].known());
            mask.set(bit++, fact[at].applies());
        }
        return mask;
    }

    /** What needs ask of each component, two bits: known, applies. */
    static byte[] states(CaseValue[] fact) {
        byte[] states = new byte[fact.length];
        for (int i = 0; i < states.length; i++) {
            states[i] = (byte) ((fact[i].known() ? 2 : 0) | (fact[i].applies() ? 1 : 0));
        }
        return states;
    }
}
