/**
 * Forms of a case, built from what the case records say of themselves: sections, fields, sides beside each other,
 * teeth.
 */
@NullMarked
package dev.fairlead.web.form;

import org.jspecify.annotations.NullMarked;
