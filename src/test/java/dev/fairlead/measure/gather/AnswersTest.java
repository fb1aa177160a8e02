package dev.fairlead.measure.gather;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.facts.BenchWork;
import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.model.Answer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Answers that follow from facts of other kinds. */
class AnswersTest {
    @ParameterizedTest
    @CsvSource({"left, yes", "right, yes", "both, no", "none, no"})
    void aPlanIsSidedWhereItNamesOneSide(String more, String sided) {
        assertThat(Made.first(new CaseBuilder().set("/plan/moreOn", more), BenchWork.class)
                        .sidedPlan())
                .hasToString(sided);
        assertThat(Made.first(new CaseBuilder(), BenchWork.class).sidedPlan().missing())
                .containsExactly("/plan/moreOn");
    }

    @Test
    void whatWasNamedHasToBeDealtWith() {
        Answer unknown = Answer.unknown("/child/medicalAdvice");
        assertThat(Answers.settled(Answer.NO, unknown, "/at")).isEqualTo(Answer.YES);
        assertThat(Answers.settled(Answer.NO, Answer.NO, "/at")).isEqualTo(Answer.YES);
        assertThat(Answers.settled(Answer.YES, Answer.YES, "/at")).isEqualTo(Answer.YES);
        assertThat(Answers.settled(Answer.YES, Answer.NO, "/at")).isEqualTo(Answer.NO);
        assertThat(Answers.settled(Answer.YES, unknown, "/at")).isEqualTo(unknown);
        assertThat(Answers.settled(Answer.YES, Answer.NOT_APPLICABLE, "/at")).isEqualTo(Answer.unknown("/at"));
    }
}
