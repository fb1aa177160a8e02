/** What answers requests: one small class for each page. */
package dev.fairlead.web.page;
