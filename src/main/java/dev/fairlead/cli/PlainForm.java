package dev.fairlead.cli;

/** Forms of output of commands that have no page to print. */
enum PlainForm {
    text,
    json
}
