package dev.fairlead.cli;

import dev.fairlead.model.Stage;
import java.util.Arrays;
import java.util.Iterator;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a stage by the word that case files use. */
final class StageWord implements ITypeConverter<Stage>, Iterable<String> {
    @Override
    public Stage convert(String word) {
        return Arrays.stream(Stage.values())
                .filter(s -> s.word().equalsIgnoreCase(word))
                .findFirst()
                .orElseThrow(() ->
                        new TypeConversionException("expected one of " + String.join(", ", this) + ", found " + word));
    }

    @Override
    public Iterator<String> iterator() {
        return Arrays.stream(Stage.values()).map(Stage::word).iterator();
    }
}
