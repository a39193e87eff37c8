// SPDX-License-Identifier: Apache-2.0
// Source: ICU (Debian libicu-dev), with CLDR's number formats of each language. ICU writes numbers, ours
// reads them; texts that people type are read by ICU's parser and by ours.
#include <doctest/doctest.h>

#include <cmath>
#include <cstdio>
#include <memory>
#include <string>
#include <vector>

#include <unicode/decimfmt.h>
#include <unicode/numfmt.h>
#include <unicode/parsepos.h>

#include "base/number_style.hpp"
#include "base/text.hpp"

using namespace snugwalk;

namespace {

struct Language {
    const char *name;
    NumberStyle style; ///< as the app takes it from its locale
};
const std::vector<Language> languages = {{"en_US", {'.', ','}},
                                         {"es_ES", {',', '.'}},
                                         {"fr_FR", {',', ' '}},
                                         {"de_DE", {',', '.'}},
                                         {"es_MX", {'.', ','}}};

std::unique_ptr<icu::DecimalFormat> formatOf(const Language &language, int decimals, bool grouped)
{
    UErrorCode status = U_ZERO_ERROR;
    std::unique_ptr<icu::NumberFormat> made(
        icu::NumberFormat::createInstance(icu::Locale(language.name), status));
    REQUIRE(U_SUCCESS(status));
    auto *decimal = dynamic_cast<icu::DecimalFormat *>(made.get());
    REQUIRE(decimal != nullptr);
    made.release();
    decimal->setMinimumFractionDigits(decimals);
    decimal->setMaximumFractionDigits(decimals);
    decimal->setGroupingUsed(grouped);
    return std::unique_ptr<icu::DecimalFormat>(decimal);
}

std::string utf8(const icu::UnicodeString &text)
{
    std::string out;
    text.toUTF8String(out);
    return out;
}

} // namespace

TEST_CASE("what ICU writes in a language is read back in its style")
{
    int checked = 0;
    for (const Language &language : languages) {
        for (const int decimals : {0, 1, 2, 3, 4}) {
            for (const bool grouped : {false, true}) {
                const auto format = formatOf(language, decimals, grouped);
                for (const double value : {0.0, 0.5, 3.215, 12.0, 65.25, 448.159, 999.5, 1000.0, 1250.0,
                                           3215.0, 12345.678, 250000.0, 1234567.891}) {
                    icu::UnicodeString text;
                    format->format(value, text);
                    const double scale = std::pow(10.0, decimals);
                    CAPTURE(language.name);
                    CAPTURE(utf8(text));
                    const auto read = parseDouble(
                        plainNumbers(utf8(text) + " m", language.style)
                            .text.substr(0, plainNumbers(utf8(text), language.style).text.size()));
                    REQUIRE(read);
                    // ICU rounds half to even, so half a unit in the last digit it wrote
                    CHECK(std::abs(*read - value) <= 0.5 / scale + 1e-9);
                    ++checked;
                }
            }
        }
    }
    std::printf("%d numbers written by ICU read back\n", checked);
}

TEST_CASE("what ICU takes whole, ours reads the same, or asks")
{
    const std::vector<const char *> texts = {
        "3,215",      "3.215",    "1.250",      "1,250",        "1.250,5", "1,250.5",
        "4,5",        "4.5",      "0,500",      "0.500",        "1250,75", "12.345.678",
        "12,345,678", "12.345,6", "1\u202f250", "1\u202f250,5", "65"};
    int taken = 0;
    int same = 0;
    for (const Language &language : languages) {
        const auto format = formatOf(language, 0, true);
        format->setMaximumFractionDigits(6);
        format->setMinimumGroupingDigits(1);
        format->setLenient(false);
        for (const char *text : texts) {
            icu::ParsePosition at(0);
            icu::Formattable value;
            const icu::UnicodeString wide = icu::UnicodeString::fromUTF8(text);
            format->parse(wide, value, at);
            if (at.getIndex() != wide.length())
                continue;
            UErrorCode status = U_ZERO_ERROR;
            CAPTURE(language.name);
            CAPTURE(text);
            const PlainNumbers plain = plainNumbers(text, language.style);
            const auto read = parseDouble(plain.text);
            REQUIRE(read);
            const bool isSame = *read == doctest::Approx(value.getDouble(status));
            // ICU groups a lone zero ("0,500" is 500 to it) and takes a point in French for a group: ours
            // reads the first as a half and asks about the second
            const bool isZero = text[0] == '0';
            CHECK((isSame || isZero || plain.doubtful.has_value()));
            if (isZero)
                CHECK(*read == doctest::Approx(0.5));
            same += isSame ? 1 : 0;
            ++taken;
        }
    }
    CHECK(same >= 50);
    std::printf("%d of %d texts read alike, the rest asked or zero-led\n", same, taken);
}
