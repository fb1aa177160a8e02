package dev.fairlead.measure.gather;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.Place;
import dev.fairlead.facts.RecordsKept;
import dev.fairlead.measure.records.RecordChecks;
import dev.fairlead.model.Films;
import java.util.List;

/** Whether the records can be believed. */
final class RecordFacts {
    private static final Place FILMS = new Place("/films", "");

    private RecordFacts() {}

    static void add(Source s, List<CaseFact> out) {
        RecordChecks r = s.records();
        Films f = s.c().films();
        out.add(new RecordsKept(
                FILMS,
                s.space().anterior().percent(),
                r.modelsAge(),
                r.filmAge(),
                r.duplicateLength(),
                r.duplicateAngle(),
                r.perimeterGap(),
                f.panoramicRead(),
                f.missingTeeth(),
                f.supernumerary(),
                f.ectopic()));
    }
}
