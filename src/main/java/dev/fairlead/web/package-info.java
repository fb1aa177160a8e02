/**
 * The local web page: cases at the desk, checklist at the chair, visits, criteria book; for this machine, or by TLS for
 * paired devices.
 */
package dev.fairlead.web;
