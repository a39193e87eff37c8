// SPDX-License-Identifier: Apache-2.0
// What the bench asks about sealant and seams.
#include <array>
#include <cmath>

#include "base/units.hpp"
#include "bench/ask/questions.hpp"
#include "bench/ask/typed.hpp"
#include "bench/joints/bead_text.hpp"
#include "bench/joints/cure.hpp"
#include "bench/joints/sealant.hpp"
#include "bench/joints/seam.hpp"
#include "weather/laws/humidity.hpp"
#include "weather/laws/sealant_window.hpp"

namespace snugwalk {
namespace {

constexpr auto sealantInputs = std::to_array<BenchInput>({
    {.name = "bead", .kind = AskKind::Text, .required = true},
    {.name = "shape",
     .kind = AskKind::Word,
     .words = "rectangle flat lap square round half_round fillet triangle half_ellipse"},
    {.name = "length",
     .dimension = Dimension::Length,
     .typical = 3.0,
     .low = 0.0,
     .high = 1000.0,
     .required = true},
    {.name = "joints", .kind = AskKind::Count, .low = 1, .high = 1000, .usual = "1"},
    {.name = "cartridge",
     .dimension = Dimension::Volume,
     .typical = 3e-4,
     .low = 1e-6,
     .high = 0.02,
     .usual = "10.1 fl oz"},
    {.name = "waste", .dimension = Dimension::Fraction, .low = 0.0, .high = 1.0, .usual = "10 %"},
    {.name = "climate", .kind = AskKind::Word, .usual = "hot", .words = "hot mixed mild"},
});

Result<BenchAnswer> answerSealant(const BenchTyped &typed)
{
    auto bead = parseBead(typed.text("bead"), typed.text("shape"));
    if (!bead)
        return bead.error();
    bead->length = typed.the<Length>("length") * typed.theNumber("joints");
    bead->waste = typed.theNumber("waste");
    const auto volume = beadVolume(*bead);
    if (!volume)
        return volume.error();
    const auto cartridge = typed.the<Volume>("cartridge");
    Estimate count = *volume;
    count.unit = "1";
    for (double *part : {&count.value, &count.low, &count.high}) {
        const auto whole = cartridgesFor(Volume::fromSi(*part), cartridge);
        if (!whole)
            return whole.error();
        *part = *whole;
    }
    Estimate yield; // of one cartridge, nothing wasted
    yield.value = cartridge.si() / beadArea(bead->shape, bead->width, bead->height).value().si();
    yield.high = yield.value;
    yield.low = yield.value / (1.0 + bead->waste);
    yield.unit = "m";
    yield.basis = "computed";
    yield.source = "plane geometry";
    const auto climate = parseRoofClimate(typed.text("climate")).value_or(RoofClimate::Hot);
    const auto life = sealantLife(bead->height, climate);
    if (!life)
        return life.error();
    BenchAnswer answer{{{"cartridges", Dimension::Count, count},
                        {"volume", Dimension::Volume, *volume},
                        {"yield", Dimension::Length, yield},
                        {"life", Dimension::Duration, *life}}};
    answer.extra = Value::Map{{"cartridges", count.value}, {"shape", std::string(slug(bead->shape))}};
    answer.lines.push_back({std::string_view(slug(bead->shape)), {}});
    return answer;
}

constexpr auto windowInputs = std::to_array<BenchInput>({
    {.name = "temperature",
     .dimension = Dimension::Temperature,
     .typical = 293.0,
     .low = 233.15,
     .high = 323.15,
     .required = true,
     .at = "humidity"},
    {.name = "humidity", .dimension = Dimension::Fraction, .low = 0.01, .high = 1.0},
    {.name = "dew-point",
     .dimension = Dimension::Temperature,
     .typical = 283.0,
     .low = 233.15,
     .high = 323.15},
    {.name = "surface", .dimension = Dimension::Temperature, .typical = 293.0, .low = 233.15, .high = 363.15},
});

Result<BenchAnswer> answerWindow(const BenchTyped &typed)
{
    const auto air = typed.the<Temperature>("temperature");
    double humidity = typed.number("humidity").value_or(0.0) * 100.0;
    // a dew point that was read goes before one worked out
    if (typed.has("dew-point")) {
        const auto dew = Temperature::fromSi(typed.theNumber("dew-point"));
        if (dew > air)
            return Error{Errc::OutOfRange, "the dew point is above the air's temperature", "dew-point",
                         "read both again, at the same place"};
        humidity = relativeHumidity(air, dew);
    } else if (humidity <= 0.0) {
        return Error{Errc::Usage, "window needs the damp of the air", "humidity",
                     "give --humidity in percent, or --dew-point"};
    }
    std::optional<Temperature> surface;
    if (const auto kelvin = typed.number("surface"))
        surface = Temperature::fromSi(*kelvin);
    const auto window = sealantWindow(air, humidity, surface);
    if (!window)
        return window.error();

    Estimate above;
    above.value = window->aboveDew.si();
    above.low = above.value - 1.0; // common practice, no source: a pocket hygrometer and a surface probe
    above.high = above.value + 1.0;
    above.unit = "K";
    above.basis = "computed";
    above.source = "ALDUCHOV-ESKRIDGE-1996; CP";
    if (window->tooCold)
        above.warnings.emplace_back("too_cold");
    if (window->tooHot)
        above.warnings.emplace_back("too_hot");
    if (window->tooDamp)
        above.warnings.emplace_back("too_damp");
    if (!surface)
        above.warnings.emplace_back("surface_unknown");
    Estimate dew = above;
    dew.value = window->dewPoint.si();
    dew.low = dew.value - 0.5;
    dew.high = dew.value + 0.5;
    dew.warnings.clear();
    BenchAnswer answer{
        {{"above-dew", Dimension::TemperatureDifference, above}, {"dew-point", Dimension::Temperature, dew}}};
    answer.lines.push_back({window->open() ? "within" : "outside", {}});
    answer.lines.push_back({"roof-cleaner", {}});
    answer.extra = Value::Map{{"within", window->open()}};
    return answer;
}

constexpr auto cureInputs = std::to_array<BenchInput>({
    {.name = "depth",
     .dimension = Dimension::Length,
     .typical = 0.006,
     .low = 0.001,
     .high = 0.025,
     .usual = "6 mm"},
    {.name = "temperature",
     .dimension = Dimension::Temperature,
     .typical = 293.0,
     .low = 277.15,
     .high = 323.15,
     .required = true,
     .at = "humidity"},
    {.name = "humidity", .dimension = Dimension::Fraction, .low = 0.01, .high = 1.0, .usual = "50 %"},
});

Result<BenchAnswer> answerCure(const BenchTyped &typed)
{
    const auto times =
        cureTimes(typed.the<Length>("depth"), Temperature::fromSi(typed.theNumber("temperature")),
                  typed.theNumber("humidity") * 100.0);
    if (!times)
        return times.error();
    return BenchAnswer{{{"cured", Dimension::Duration, times->full},
                        {"rain", Dimension::Duration, times->rain},
                        {"skin", Dimension::Duration, times->skin}}};
}

constexpr auto seamInputs = std::to_array<BenchInput>({
    {.name = "material",
     .kind = AskKind::Word,
     .usual = "aluminum",
     .words = "aluminum fiberglass steel rubber"},
    {.name = "run",
     .dimension = Dimension::Length,
     .typical = 3.0,
     .low = 0.001,
     .high = 30.0,
     .required = true},
    {.name = "width",
     .dimension = Dimension::Length,
     .typical = 0.01,
     .low = 0.0005,
     .high = 0.1,
     .required = true},
    {.name = "swing",
     .dimension = Dimension::TemperatureDifference,
     .typical = 50.0,
     .low = 0.1,
     .high = 150.0,
     .usual = "50 K"},
    {.name = "class", .dimension = Dimension::Fraction, .low = 0.05, .high = 1.0, .usual = "25 %"},
});

Result<BenchAnswer> answerSeam(const BenchTyped &typed)
{
    const auto material = parseSeamMaterial(typed.text("material")).value_or(SeamMaterial::Aluminum);
    const auto moved =
        seamMovement({expansionPerKelvin(material), typed.the<Length>("run"), typed.the<Length>("width"),
                      typed.the<TemperatureDifference>("swing"), typed.theNumber("class")});
    if (!moved)
        return moved.error();
    return BenchAnswer{{{"movement", Dimension::Length, moved->movement},
                        {"strain", Dimension::Fraction, moved->strain},
                        {"least-width", Dimension::Length, moved->width}}};
}

constexpr auto table = std::to_array<BenchQuestion>({
    {.name = "sealant",
     .subject = "joints",
     .inputs = sealantInputs,
     .cautions = "roof_fall match_chemistry",
     .example = "--bead \"1 1/2 x 1/8 in flat\" --length \"64 in\" --cartridge \"10.3 fl oz\"",
     .answer = answerSealant},
    {.name = "window",
     .subject = "joints",
     .inputs = windowInputs,
     .cautions = "roof_fall label_first no_wax",
     .example = "--temperature \"20 °C\" --humidity \"65 %\" --surface \"17 °C\"",
     .answer = answerWindow},
    {.name = "cure",
     .subject = "joints",
     .inputs = cureInputs,
     .cautions = "label_first",
     .example = "--depth \"1/4 in\" --temperature \"73 °F\" --humidity \"50 %\"",
     .answer = answerCure},
    {.name = "seam",
     .subject = "joints",
     .inputs = seamInputs,
     .cautions = "match_chemistry",
     .example = "--material aluminum --run \"5 m\" --width \"10 mm\" --swing \"60 K\"",
     .answer = answerSeam},
});

} // namespace

std::span<const BenchQuestion> jointQuestions() { return table; }

} // namespace snugwalk
