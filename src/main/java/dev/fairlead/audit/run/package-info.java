/** Runs an audit: cases judged on all cores, in order, in bounded memory, to be taken up again where it stopped. */
package dev.fairlead.audit.run;
