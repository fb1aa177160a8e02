package dev.fairlead.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** Tests that need a browser must not go missing unseen. */
class WithBrowserTest {
    @Test
    void withoutABrowserTestsAreSkippedSayingWhyOrFailWhereItIsRequired() {
        assertThat(WithBrowser.verdict(true, null).isDisabled()).isFalse();
        assertThat(WithBrowser.verdict(false, null).isDisabled()).isTrue();
        assertThat(WithBrowser.verdict(false, null).getReason())
                .hasValueSatisfying(r -> assertThat(r).contains("/usr/bin/chromium"));
        assertThatThrownBy(() -> WithBrowser.verdict(false, "required")).hasMessageContaining("FAIRLEAD_BROWSER");
    }
}
