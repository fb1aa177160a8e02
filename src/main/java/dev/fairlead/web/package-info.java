/**
 * The local web page: cases at the desk, checklist at the chair, visits, criteria book; for this machine, or by TLS for
 * paired devices.
 */
@NullMarked
package dev.fairlead.web;

import org.jspecify.annotations.NullMarked;
