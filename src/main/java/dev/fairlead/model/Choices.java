package dev.fairlead.model;

/** The closed lists of the case model. */
public final class Choices {
    private Choices() {}

    /** What stands at a tooth's place. */
    public enum ToothState implements Choice {
        PRIMARY_PRESENT,
        ERUPTED,
        UNERUPTED,
        MISSING
    }

    /** Sex as the published width regressions and exfoliation tables use it. */
    public enum Sex implements Choice {
        FEMALE,
        MALE
    }

    /** A population with a published width regression that was read at its source. */
    public enum Population implements Choice {
        INDIA_PUNJAB,
        SPAIN
    }

    /** Relation of the first molars on one side (Angle). */
    public enum MolarRelation implements Choice {
        CLASS_I,
        END_TO_END,
        CLASS_II,
        CLASS_III
    }

    /** Which side a plan advances more, or which side was activated. */
    public enum Sides implements Choice {
        BOTH,
        LEFT,
        RIGHT,
        NONE
    }

    /** Material of a wire. */
    public enum Material implements Choice {
        STAINLESS_STEEL,
        NICKEL_TITANIUM,
        BETA_TITANIUM,
        COBALT_CHROMIUM,
        NICKEL_FREE_STEEL
    }

    /** Cross-section of a wire. */
    public enum Section implements Choice {
        ROUND,
        RECTANGULAR
    }

    /** Class of arch form. */
    public enum FormClass implements Choice {
        TAPERED,
        OVOID,
        SQUARE
    }

    /** Temper of stainless-steel wire, as its maker declares it. */
    public enum Temper implements Choice {
        SOFT,
        HARD,
        EXTRA_HARD
    }

    /** What a periodontal opinion says of advancing the lower incisors. */
    public enum PeriodontalAdvice implements Choice {
        MAY_ADVANCE,
        GRAFT_FIRST,
        DO_NOT_ADVANCE
    }

    /** Mobility of a tooth by grade (0 none to III). */
    public enum Mobility implements Choice {
        GRADE_0,
        GRADE_I,
        GRADE_II,
        GRADE_III
    }

    /** Role of a person who answered, logged or waived; never a name. */
    public enum Role implements Choice {
        RESIDENT,
        CLINICIAN,
        SUPERVISOR,
        DIRECTOR,
        ASSISTANT
    }

    /** Points of a tooth that are digitised. */
    public enum LandmarkPoint implements Choice {
        /** Mesial anatomic contact point. */
        MESIAL,
        /** Distal anatomic contact point. */
        DISTAL,
        /** Labial or buccal point, on which an arch form is fitted. */
        LABIAL,
        /** Mesial end of the molar tube, or the buccal point where it will be. */
        TUBE,
        /** Middle of the bracket slot. */
        BRACKET,
        /** Middle of the incisal edge. */
        INCISAL,
        /** Tip of the cusp. */
        CUSP
    }

    /** What a reading was taken on when it was not taken by hand. */
    public enum PictureKind implements Choice {
        ARCH_PICTURE,
        LATERAL_CEPHALOGRAM,
        PANORAMIC,
        SURFACE_SCAN,
        POINT_TABLE
    }

    /** How the scale of a picture was taken. */
    public enum PictureScale implements Choice {
        KNOWN_LENGTH,
        SINGLE_TOOTH,
        FRAME,
        PIXEL_SPACING,
        MILLIMETRES
    }

    /** How visits activate the two folds. */
    public enum Pattern implements Choice {
        BOTH_SIDES,
        ALTERNATING
    }
}
