// SPDX-License-Identifier: Apache-2.0
// Pictures from what was typed and what came out.
#include "bench_pictures.hpp"

#include <cmath>

#include "bench/ask/show.hpp"
#include "bench/joints/bead_text.hpp"

namespace snugwalk {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(BenchPictures)
};

QVariantMap star(const BenchAnswer &answer)
{
    QVariantList sequence;
    for (const Value &nut : answer.extra["sequence"].list()) {
        if (const auto number = nut.asInt())
            sequence << static_cast<int>(*number);
    }
    if (sequence.size() < 3)
        return {};
    return {{QStringLiteral("kind"), QStringLiteral("star")},
            {QStringLiteral("studs"), static_cast<int>(sequence.size())},
            {QStringLiteral("sequence"), sequence}};
}

QString massAt(const Voice &voice, const std::vector<double> &list, std::size_t at)
{
    return at < list.size() ? voice.localised(showFor(Dimension::Mass, list[at], voice.units)) : QString();
}

std::vector<double> listTyped(const std::optional<BenchTyped> &typed, std::string_view name)
{
    return typed ? typed->list(name) : std::vector<double>();
}

QVariantMap weigh(const Voice &voice, const BenchQuestion &question, const std::optional<BenchTyped> &typed,
                  const BenchAnswer *answer)
{
    const auto solo = listTyped(typed, "solo");
    const auto coupled = listTyped(typed, "coupled");
    const auto bars = listTyped(typed, "bars");
    const QStringList names{Words::tr("tow vehicle, front axle"), Words::tr("tow vehicle, rear axle"),
                            Words::tr("trailer's axles")};
    QVariantList pads;
    QStringList spoken;
    for (std::size_t i = 0; i < 3; ++i) {
        const QString name = names[static_cast<qsizetype>(i)];
        const QString alone = massAt(voice, solo, i);
        const QString together = massAt(voice, coupled, i);
        pads << QVariantMap{{QStringLiteral("name"), name},
                            {QStringLiteral("solo"), alone},
                            {QStringLiteral("coupled"), together},
                            {QStringLiteral("bars"), massAt(voice, bars, i)}};
        if (!together.isEmpty())
            spoken << Words::tr("%1: coupled %2", "axle, mass").arg(name, together);
        if (!alone.isEmpty())
            spoken << Words::tr("%1: alone %2", "axle, mass").arg(name, alone);
    }
    QString figure;
    QString value;
    if (answer != nullptr && !answer->figures.empty()) {
        const BenchFigure &first = answer->figures.front();
        figure = Voice::text(voice.texts.benchWord(question.name, first.name, "figures"));
        value = voice.localised(showFigure(first, first.estimate.value, voice.units));
        spoken << QStringLiteral("%1: %2").arg(figure, value);
    }
    if (spoken.isEmpty())
        spoken << Words::tr("Tow vehicle and trailer on the scale, one pad an axle: nothing typed yet.");
    return {{QStringLiteral("kind"), QStringLiteral("weigh")},
            {QStringLiteral("pads"), pads},
            {QStringLiteral("figure"), figure},
            {QStringLiteral("value"), value},
            {QStringLiteral("spoken"), spoken.join(QStringLiteral("; "))}};
}

QVariantMap bead(const Voice &voice, const std::optional<BenchTyped> &typed)
{
    if (!typed)
        return {};
    const auto section = parseBead(typed->text("bead"), typed->text("shape"));
    if (!section || section->width.si() <= 0.0)
        return {};
    const bool isRound = section->shape == BeadShape::Round;
    const bool isHalf = section->shape == BeadShape::HalfRound;
    const double width = section->width.si();
    const double height = isRound ? width : isHalf ? width / 2.0 : section->height.si();
    const auto shown = [&](double si) {
        return voice.localised(showFor(Dimension::Length, si, voice.units));
    };
    const auto length = typed->number("length");
    const QString lengthText = length ? shown(*length) : QString();
    return {{QStringLiteral("kind"), QStringLiteral("bead")},
            {QStringLiteral("shape"), Voice::text(slug(section->shape))},
            {QStringLiteral("aspect"), height / width},
            {QStringLiteral("widthText"), shown(width)},
            {QStringLiteral("heightText"), isRound ? QString() : shown(height)},
            {QStringLiteral("lengthText"), lengthText},
            {QStringLiteral("spoken"), Words::tr("Section of the bead: %1 wide, %2 high, %3 long")
                                           .arg(shown(width), shown(height), lengthText)}};
}

} // namespace

QVariantList benchPictures(const Voice &voice, const BenchQuestion &question, const BenchTexts &texts,
                           CivilDate today, const BenchAnswer *answer)
{
    const auto read = BenchTyped::read(question, texts, voice.units, today);
    const std::optional<BenchTyped> typed = read ? std::optional(*read) : std::nullopt;
    QVariantList pictures;
    const auto add = [&](const QVariantMap &picture) {
        if (!picture.isEmpty())
            pictures << picture;
    };
    if (answer != nullptr)
        add(star(*answer));
    if (question.name == "weigh")
        add(weigh(voice, question, typed, answer));
    if (answer != nullptr && question.name == "sealant")
        add(bead(voice, typed));
    return pictures;
}

} // namespace snugwalk
