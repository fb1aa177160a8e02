/**
 * The folder of case files: listing, reading, atomic saving, earlier versions, and what happens when two windows write.
 */
@NullMarked
package dev.fairlead.web.store;

import org.jspecify.annotations.NullMarked;
