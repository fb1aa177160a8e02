package dev.fairlead.intake.text;

import com.fasterxml.jackson.core.Base64Variant;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.ObjectCodec;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.Version;
import com.fasterxml.jackson.core.base.ParserMinimalBase;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.BigInteger;
import org.jspecify.annotations.Nullable;

/** A parser that gives the spelling of every value and leaves it to the reader what number that is. */
abstract class TextParser extends ParserMinimalBase {
    TextParser(StreamReadConstraints limits) {
        // no features of JSON: to ask for the usual ones would load all that reads and writes it
        super(0, limits);
    }

    @Override
    public char[] getTextCharacters() {
        throw textOnly();
    }

    @Override
    public int getTextLength() {
        throw textOnly();
    }

    @Override
    public int getTextOffset() {
        throw textOnly();
    }

    @Override
    public boolean hasTextCharacters() {
        throw textOnly();
    }

    @Deprecated
    @Override
    public String getCurrentName() throws IOException {
        return currentName();
    }

    @Deprecated
    @Override
    public JsonLocation getTokenLocation() {
        return currentTokenLocation();
    }

    @Deprecated
    @Override
    public JsonLocation getCurrentLocation() {
        return currentLocation();
    }

    @Override
    public Number getNumberValue() {
        throw textOnly();
    }

    @Override
    public NumberType getNumberType() {
        throw textOnly();
    }

    @Override
    public int getIntValue() {
        throw textOnly();
    }

    @Override
    public long getLongValue() {
        throw textOnly();
    }

    @Override
    public BigInteger getBigIntegerValue() {
        throw textOnly();
    }

    @Override
    public float getFloatValue() {
        throw textOnly();
    }

    @Override
    public double getDoubleValue() {
        throw textOnly();
    }

    @Override
    public BigDecimal getDecimalValue() {
        throw textOnly();
    }

    @Override
    public byte[] getBinaryValue(Base64Variant variant) {
        throw textOnly();
    }

    @Override
    public @Nullable ObjectCodec getCodec() {
        return null;
    }

    @Override
    public void setCodec(ObjectCodec codec) {
        throw textOnly();
    }

    @Override
    public Version version() {
        return Version.unknownVersion();
    }

    @Override
    public void overrideCurrentName(String name) {
        throw textOnly();
    }

    @Override
    protected void _handleEOF() {
        // the end of the text ends every loop over tokens
    }

    private static UnsupportedOperationException textOnly() {
        return new UnsupportedOperationException("the text of a token is all that is read");
    }
}
