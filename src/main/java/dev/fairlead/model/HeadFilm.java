package dev.fairlead.model;

/** Angles and distances from the lateral head film before treatment. */
public record HeadFilm(
        @Field(
                value = "Lower incisor to mandibular plane.",
                unit = Unit.DEGREE,
                low = 60,
                high = 130,
                error = ErrorKind.FILM_ANGLE,
                label = "lower incisor to mandibular plane")
        Measured incisorMandibular,

        @Field(
                value = "Mandibular plane to Frankfort horizontal (FMA).",
                unit = Unit.DEGREE,
                low = 5,
                high = 55,
                error = ErrorKind.PLANE_ANGLE,
                label = "mandibular plane angle")
        Measured mandibularPlane,

        @Field(
                value = "Lower incisor edge to the line A-Pogonion; in front of it is positive.",
                unit = Unit.MM,
                low = -12,
                high = 15,
                error = ErrorKind.FILM_LENGTH,
                label = "lower incisor to A-Pog")
        Measured incisorToAPog,

        @Field(
                value = "ANB; negative in a class III relation.",
                unit = Unit.DEGREE,
                low = -15,
                high = 15,
                error = ErrorKind.SKELETAL_ANGLE,
                label = "ANB")
        Measured anb,

        @Field(
                value = "Occlusal plane to mandibular plane.",
                unit = Unit.DEGREE,
                low = 0,
                high = 40,
                error = ErrorKind.PLANE_ANGLE,
                label = "occlusal plane to mandibular plane")
        Measured occlusalMandibular,

        @Field(
                value = "Incisal edge to the centre about which the lower incisor is taken to tip.",
                unit = Unit.MM,
                low = 12,
                high = 32,
                error = ErrorKind.FILM_RADIUS,
                mayNotApply = true,
                label = "incisal edge to centre of tipping")
        Measured tippingRadius) {}
