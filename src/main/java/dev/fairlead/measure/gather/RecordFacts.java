package dev.fairlead.measure.gather;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.Place;
import dev.fairlead.facts.RecordsKeptBuilder;
import dev.fairlead.measure.records.RecordChecks;
import dev.fairlead.model.Choices.ToothState;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Films;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Tooth;
import java.util.List;

/** Whether the records can be believed. */
final class RecordFacts {
    private static final Place FILMS = new Place("/films", "");

    private static final List<Tooth> CANINES = List.of(Tooth.of(33), Tooth.of(43), Tooth.of(13), Tooth.of(23));

    private RecordFacts() {}

    static void add(Gathered s, List<CaseFact> out) {
        RecordChecks r = s.records();
        Films f = s.c().films();
        out.add(RecordsKeptBuilder.builder()
                .place(FILMS)
                .anteriorRatio(ratio(s))
                .modelsAge(r.modelsAge())
                .filmAge(r.filmAge())
                .modelsAgeSoFar(r.modelsAgeSoFar())
                .filmAgeSoFar(r.filmAgeSoFar())
                .duplicateLength(r.duplicateLength())
                .duplicateAngle(r.duplicateAngle())
                .perimeterGap(r.perimeterGap())
                .panoramicRead(f.panoramicRead())
                .missingTeeth(f.missingTeeth())
                .supernumerary(f.supernumerary())
                .ectopic(f.ectopic())
                .caninePathNormal(f.caninePathNormal())
                .infraoccludedMolar(f.infraoccludedMolar())
                .ectopicFirstMolar(f.ectopicFirstMolar())
                .build());
    }

    /** While a permanent canine has not erupted there is no ratio yet; the state has to say so. */
    private static Measured ratio(Gathered s) {
        Measured percent = s.space().anterior().percent();
        for (Tooth t : CANINES) {
            Fact<ToothState> state = s.readings().tooth(t).state();
            boolean toCome = state.is(ToothState.UNERUPTED) || state.is(ToothState.PRIMARY_PRESENT);
            if (toCome && !s.readings().width(t).known()) {
                return Measured.notApplicable();
            }
        }
        return percent;
    }
}
