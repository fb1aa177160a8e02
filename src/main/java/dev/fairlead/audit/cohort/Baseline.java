package dev.fairlead.audit.cohort;

import dev.fairlead.model.ArchMeasures;
import dev.fairlead.model.BiteBefore;
import dev.fairlead.model.Case;
import dev.fairlead.model.HeadFilm;
import dev.fairlead.model.Holding;
import dev.fairlead.model.Stage;
import dev.fairlead.model.Visit;
import dev.fairlead.model.shape.Draft;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Makes an invented case without a fault: every fact known up to its stage, every value well inside the default limits.
 */
final class Baseline {
    private static final int RESIDENTS = 24;

    private Baseline() {}

    static Case draw(long index, Draws d) {
        InventedChild s = InventedChild.draw(d);
        BaselineRecords records = new BaselineRecords(s, d);
        BaselineWire wire = new BaselineWire(s, d);
        BaselineCourse course = new BaselineCourse(s, d);
        ArchMeasures arch = records.arch();
        HeadFilm film = records.headFilm();
        Draft<Case> made = Draft.of(Case.class, "")
                .set("fairlead", 1)
                .set("id", "c" + index)
                .set("stage", s.stage())
                .set("resident", "r" + two(d.whole(1, RESIDENTS)))
                .set("child", records.child())
                .set("teeth", records.teeth())
                .set("contacts", records.contacts("/contacts", 0.5, 1.8))
                .set("space", records.space())
                .set("arch", arch)
                .set("films", records.films())
                .set("headFilm", film);
        BiteBefore bite = records.bite();
        made.set("bite", bite)
                .set("mouth", records.mouth())
                .set("consent", records.consent())
                .set("plan", records.plan())
                .set("wire", wire.wire(arch));
        List<Visit> visits = List.of();
        @Nullable Holding holding = null;
        if (s.stage().hasReached(Stage.READINESS)) {
            made.set("hardware", wire.hardware(records.contacts("/hardware/contactsNow", 0, 0.12)));
        }
        if (s.stage().hasReached(Stage.BENCH)) {
            made.set("bench", wire.bench(arch));
        }
        if (s.stage().hasReached(Stage.INSERTION)) {
            made.set("insertion", wire.insertion());
        }
        if (s.stage().hasReached(Stage.ACTIVATION)) {
            visits = course.visits();
            made.set("visits", visits);
        }
        if (s.stage().hasReached(Stage.HOLDING)) {
            holding = course.holding(
                    visits,
                    records.contacts("/holding/contacts", 0, 0.12),
                    film.incisorMandibular().value(),
                    bite.overjet().value());
            made.set("holding", holding);
        }
        return made.set("date", course.today(visits, holding)).make();
    }

    private static String two(int n) {
        return n < 10 ? "0" + n : Integer.toString(n);
    }
}
