package dev.fairlead.rules;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Stage;
import dev.fairlead.model.Unit;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The built-in rulebase as a program needs it at once: catalogue, conditions, and what the engine decided. The build
 * makes it of the checked texts, so that a start reads neither JSON nor DRL.
 *
 * @param hash of the texts, as {@link RuleFiles#hash()} gives it
 * @param rules number of rules that the engine holds
 * @param decided by criterion, as {@link Decided#bytes} gives it
 */
record Prepared(
        String hash, int rules, Catalogue catalogue, Map<String, List<Term>> terms, Map<String, byte[]> decided) {
    /** Null when the build left none. */
    static Prepared onClassPath() {
        byte[] bytes = BuiltIn.resource(BuiltIn.PREPARED);
        return bytes == null ? null : of(bytes);
    }

    static Prepared of(byte[] bytes) {
        try {
            return new Reader(new DataInputStream(new ByteArrayInputStream(bytes))).all();
        } catch (IOException | ClassNotFoundException e) {
            throw new RulebaseException(
                    List.of("the built-in rulebase is not what was compiled (" + e + "): build again"));
        }
    }

    byte[] bytes() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            new Writer(new DataOutputStream(bytes)).all(this);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /** Writes everything in the order in which {@link Reader} reads it. */
    private record Writer(DataOutputStream out) {
        void all(Prepared p) throws IOException {
            out.writeUTF(p.hash);
            out.writeInt(p.rules);
            out.writeUTF(p.catalogue.version());
            out.writeInt(p.catalogue.sources().size());
            for (Source s : p.catalogue.sources().values()) {
                out.writeUTF(s.key());
                out.writeUTF(s.citation());
                out.writeByte(s.kind().ordinal());
            }
            out.writeInt(p.catalogue.criteria().size());
            for (Criterion c : p.catalogue.criteria()) {
                criterion(c);
                terms(p.terms.get(c.id()));
                byte[] decided = p.decided.getOrDefault(c.id(), new byte[0]);
                out.writeInt(decided.length);
                out.write(decided);
            }
        }

        private void criterion(Criterion c) throws IOException {
            for (String text :
                    List.of(c.id(), c.title(), c.asks(), c.why(), c.about().getName(), c.passes(), c.dispute())) {
                out.writeUTF(text);
            }
            out.writeByte(c.stage().ordinal());
            strings(c.needs().stream().map(Need::component).toList());
            strings(c.sources());
            strings(List.copyOf(c.reasons().keySet()));
            for (Reason r : c.reasons().values()) {
                out.writeByte(r.weight().ordinal());
                out.writeUTF(r.title());
                out.writeUTF(r.says());
                out.writeUTF(r.todo());
            }
            strings(List.copyOf(c.exemptions().keySet()));
            strings(List.copyOf(c.exemptions().values()));
            strings(List.copyOf(c.thresholds().keySet()));
            for (Threshold t : c.thresholds().values()) {
                out.writeUTF(t.name());
                out.writeUTF(t.says());
                out.writeByte(t.unit().ordinal());
                for (double number : new double[] {t.value(), t.low(), t.high(), t.step()}) {
                    out.writeDouble(number);
                }
                out.writeBoolean(t.inclusive());
                out.writeByte(t.bound().ordinal());
                strings(t.sources());
            }
        }

        private void terms(List<Term> terms) throws IOException {
            out.writeByte(terms.size());
            for (Term t : terms) {
                out.writeUTF(t.need().component());
                out.writeByte(t.kind().ordinal());
                out.writeUTF(t.limit());
            }
        }

        private void strings(List<String> all) throws IOException {
            out.writeByte(all.size());
            for (String one : all) {
                out.writeUTF(one);
            }
        }
    }

    /** Reads what {@link Writer} wrote. */
    private record Reader(DataInputStream in) {
        Prepared all() throws IOException, ClassNotFoundException {
            String hash = in.readUTF();
            int rules = in.readInt();
            String version = in.readUTF();
            Map<String, Source> sources = new LinkedHashMap<>();
            for (int n = in.readInt(); n > 0; n--) {
                String key = in.readUTF();
                sources.put(key, new Source(key, in.readUTF(), Source.Kind.values()[in.readByte()]));
            }
            List<Criterion> criteria = new ArrayList<>();
            Map<String, List<Term>> terms = new HashMap<>();
            Map<String, byte[]> decided = new HashMap<>();
            for (int n = in.readInt(); n > 0; n--) {
                Criterion c = criterion();
                criteria.add(c);
                terms.put(c.id(), terms(c.about()));
                byte[] table = in.readNBytes(in.readInt());
                if (table.length > 0) {
                    decided.put(c.id(), table);
                }
            }
            return new Prepared(hash, rules, new Catalogue(version, criteria, sources), terms, decided);
        }

        private Criterion criterion() throws IOException, ClassNotFoundException {
            String id = in.readUTF();
            String title = in.readUTF();
            String asks = in.readUTF();
            String why = in.readUTF();
            Class<? extends CaseFact> about = Class.forName(in.readUTF()).asSubclass(CaseFact.class);
            String passes = in.readUTF();
            String dispute = in.readUTF();
            Stage stage = Stage.values()[in.readByte()];
            List<Need> needs = new ArrayList<>();
            for (String component : strings()) {
                needs.add(need(about, component));
            }
            List<String> sources = strings();
            Map<String, Reason> reasons = new LinkedHashMap<>();
            for (String key : strings()) {
                reasons.put(key, new Reason(Outcome.values()[in.readByte()], in.readUTF(), in.readUTF(), in.readUTF()));
            }
            Map<String, String> exemptions = texts();
            Map<String, Threshold> thresholds = new LinkedHashMap<>();
            for (String name : strings()) {
                thresholds.put(
                        name,
                        new Threshold(
                                in.readUTF(),
                                in.readUTF(),
                                Unit.values()[in.readByte()],
                                in.readDouble(),
                                in.readDouble(),
                                in.readDouble(),
                                in.readDouble(),
                                in.readBoolean(),
                                Threshold.Bound.values()[in.readByte()],
                                strings()));
            }
            return new Criterion(
                    id,
                    stage,
                    title,
                    asks,
                    why,
                    about,
                    needs,
                    passes,
                    reasons,
                    exemptions,
                    thresholds,
                    sources,
                    dispute);
        }

        private Map<String, String> texts() throws IOException {
            List<String> keys = strings();
            List<String> values = strings();
            Map<String, String> texts = new LinkedHashMap<>();
            for (int i = 0; i < keys.size(); i++) {
                texts.put(keys.get(i), values.get(i));
            }
            return texts;
        }

        private List<Term> terms(Class<? extends CaseFact> about) throws IOException {
            Term[] terms = new Term[in.readByte()];
            for (int i = 0; i < terms.length; i++) {
                terms[i] = new Term(need(about, in.readUTF()), Term.Kind.values()[in.readByte()], in.readUTF());
            }
            return List.of(terms);
        }

        private static Need need(Class<? extends CaseFact> about, String component) throws IOException {
            Need need = Need.of(about, component);
            if (need == null) {
                throw new IOException(about.getSimpleName() + " has no " + component);
            }
            return need;
        }

        private List<String> strings() throws IOException {
            String[] all = new String[in.readByte()];
            for (int i = 0; i < all.length; i++) {
                all[i] = in.readUTF();
            }
            return List.of(all);
        }
    }
}
