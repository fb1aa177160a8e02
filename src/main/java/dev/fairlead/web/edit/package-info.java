/**
 * Changing a case from a form: what was typed, whether it is taken, and what happens when another window was quicker.
 */
@NullMarked
package dev.fairlead.web.edit;

import org.jspecify.annotations.NullMarked;
