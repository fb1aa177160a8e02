/**
 * Forms of a case, built from what the case records say of themselves: sections, fields, sides beside each other,
 * teeth.
 */
package dev.fairlead.web.form;
