/** The local web page: cases at the desk, checklist at the chair, visits, criteria book; bound to this machine only. */
package dev.fairlead.web;
