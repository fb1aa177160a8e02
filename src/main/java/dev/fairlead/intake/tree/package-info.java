/** A case as a tree whose single values can be changed, for forms and for trying other plans. */
@NullMarked
package dev.fairlead.intake.tree;

import org.jspecify.annotations.NullMarked;
