/** The command line: reads arguments and files, calls the rest, prints, and tells the outcome by exit code. */
@NullMarked
package dev.fairlead.cli;

import org.jspecify.annotations.NullMarked;
