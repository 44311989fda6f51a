package org.hearthrule.input;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PlaceTest {

    @Test
    void isShownAsFileLineColumn() {
        assertThat(new Place("law/mo.yaml", 3, 14)).hasToString("law/mo.yaml:3:14");
    }
}
