package dev.fairlead.web.page;

/**
 * What stands around every page.
 *
 * @param title of the page, for the window and the heading of the browser's history
 * @param where which entry of the main navigation is current: {@code cases}, {@code book} or empty
 * @param folder name of the folder of cases
 * @param assets hash of styles and scripts, so that a browser never mixes old and new
 */
public record PageFrame(String title, String where, String folder, String assets) {}
