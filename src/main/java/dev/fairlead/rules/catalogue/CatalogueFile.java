package dev.fairlead.rules.catalogue;

import dev.fairlead.rules.catalogue.CriterionFile.Head;
import dev.fairlead.rules.catalogue.CriterionFile.SourceFile;
import java.util.Map;

/**
 * All texts of a rulebase as they stand in its files, in one: what a catalogue is made of, and what the build keeps.
 *
 * @param head null where it could not be read
 * @param sources the bibliography by key
 * @param criteria by folder ({@code stage/id})
 */
public record CatalogueFile(Head head, Map<String, SourceFile> sources, Map<String, CriterionFile> criteria) {}
