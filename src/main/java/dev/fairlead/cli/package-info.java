/** The command line: reads arguments and files, calls the rest, prints, and tells the outcome by exit code. */
package dev.fairlead.cli;
