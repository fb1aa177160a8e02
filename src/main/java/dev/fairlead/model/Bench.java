package dev.fairlead.model;

/** The wire as it was made, tried in on the model. */
public record Bench(
        @Field("Is the wire marked at the midline?") Answer midlineMarked,
        @Field("The left fold.") Fold left,
        @Field("The right fold.") Fold right,

        @Field("Was the second side marked with the first side seated against its tube?")
        Answer otherSideMarkedSeated,

        @Field(
                value = "Root-mean-square misfit between preform and model, where it was measured.",
                unit = Unit.MM,
                low = 0,
                high = 15,
                error = ErrorKind.BENCH_LENGTH,
                mayNotApply = true,
                label = "mean square misfit of the preform")
        Measured misfitRms,

        @Field(
                value = "Largest misfit between preform and model, where it was measured.",
                unit = Unit.MM,
                low = 0,
                high = 15,
                error = ErrorKind.BENCH_LENGTH,
                mayNotApply = true,
                label = "largest misfit of the preform")
        Measured misfitWorst,

        @Field(
                value = "Root-mean-square misfit after the folds were bent.",
                unit = Unit.MM,
                low = 0,
                high = 15,
                error = ErrorKind.BENCH_LENGTH,
                label = "mean square misfit after folding")
        Measured misfitRmsAfter,

        @Field(
                value = "Largest misfit after the folds were bent.",
                unit = Unit.MM,
                low = 0,
                high = 15,
                error = ErrorKind.BENCH_LENGTH,
                label = "largest misfit after folding")
        Measured misfitWorstAfter,

        @Field(
                value = "Largest gap at a bracket with the wire passive on the model.",
                unit = Unit.MM,
                low = 0,
                high = 10,
                error = ErrorKind.FEELER,
                label = "passive gap wire to bracket")
        Measured passiveGap,

        @Field(value = "How often the most-bent spot was bent back.", low = 0, high = 50, label = "times bent back")
        Measured rebends) {
    /** The fold of one side. */
    public Fold fold(Side side) {
        return side == Side.LEFT ? left : right;
    }
}
