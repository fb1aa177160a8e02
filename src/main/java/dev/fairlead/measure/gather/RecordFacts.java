package dev.fairlead.measure.gather;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.Place;
import dev.fairlead.facts.RecordsKeptBuilder;
import dev.fairlead.measure.records.RecordChecks;
import dev.fairlead.model.Films;
import java.util.List;

/** Whether the records can be believed. */
final class RecordFacts {
    private static final Place FILMS = new Place("/films", "");

    private RecordFacts() {}

    static void add(Gathered s, List<CaseFact> out) {
        RecordChecks r = s.records();
        Films f = s.c().films();
        out.add(RecordsKeptBuilder.builder()
                .place(FILMS)
                .anteriorRatio(s.space().anterior().percent())
                .modelsAge(r.modelsAge())
                .filmAge(r.filmAge())
                .duplicateLength(r.duplicateLength())
                .duplicateAngle(r.duplicateAngle())
                .perimeterGap(r.perimeterGap())
                .panoramicRead(f.panoramicRead())
                .missingTeeth(f.missingTeeth())
                .supernumerary(f.supernumerary())
                .ectopic(f.ectopic())
                .build());
    }
}
