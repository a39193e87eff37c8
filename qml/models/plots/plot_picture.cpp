// SPDX-License-Identifier: Apache-2.0
// From a sheet to what QML draws: one map an ink.
#include "plot_picture.hpp"

#include <QFont>
#include <QFontMetricsF>

namespace snugwalk {
namespace {

QString toneName(SheetTone tone)
{
    switch (tone) {
    case SheetTone::Ink:
        return QStringLiteral("ink");
    case SheetTone::Quiet:
        return QStringLiteral("quiet");
    case SheetTone::Faint:
        return QStringLiteral("faint");
    case SheetTone::Shade:
        return QStringLiteral("shade");
    case SheetTone::Paper:
        return QStringLiteral("paper");
    case SheetTone::Watch:
        return QStringLiteral("watch");
    case SheetTone::Mend:
        return QStringLiteral("mend");
    case SheetTone::Hold:
        return QStringLiteral("hold");
    }
    return QStringLiteral("ink");
}

QString shapeName(PlotShape shape)
{
    switch (shape) {
    case PlotShape::Dot:
        return QStringLiteral("dot");
    case PlotShape::Ring:
        return QStringLiteral("ring");
    case PlotShape::Square:
        return QStringLiteral("square");
    case PlotShape::Half:
        return QStringLiteral("half");
    case PlotShape::Wedge:
        return QStringLiteral("wedge");
    case PlotShape::Block:
        return QStringLiteral("block");
    }
    return QStringLiteral("dot");
}

QVariantList flat(const std::vector<SheetSpot> &spots)
{
    QVariantList list;
    for (const SheetSpot &spot : spots)
        list << spot.x << spot.y;
    return list;
}

struct InkMap {
    QVariantMap operator()(const SheetArea &area) const
    {
        return {{QStringLiteral("kind"), QStringLiteral("area")},
                {QStringLiteral("tone"), toneName(area.tone)},
                {QStringLiteral("xy"), flat(area.spots)}};
    }
    QVariantMap operator()(const SheetLine &line) const
    {
        QVariantList dash; // Canvas counts dashes in widths of the line
        for (const double part : line.dash)
            dash << part / line.width;
        return {{QStringLiteral("kind"), QStringLiteral("line")},
                {QStringLiteral("tone"), toneName(line.tone)},
                {QStringLiteral("xy"), flat(line.spots)},
                {QStringLiteral("width"), line.width},
                {QStringLiteral("dash"), dash}};
    }
    QVariantMap operator()(const SheetShape &shape) const
    {
        return {{QStringLiteral("kind"), QStringLiteral("shape")},
                {QStringLiteral("shape"), shapeName(shape.shape)},
                {QStringLiteral("xy"), QVariantList{shape.at.x, shape.at.y}},
                {QStringLiteral("size"), shape.size}};
    }
};

QVariantMap wordsMap(const SheetWords &words)
{
    const double left = words.side == SheetSide::Start    ? words.at.x
                        : words.side == SheetSide::Middle ? words.at.x - words.width / 2.0
                                                          : words.at.x - words.width;
    return {{QStringLiteral("x"), left},
            {QStringLiteral("y"), words.at.y},
            {QStringLiteral("width"), words.width},
            {QStringLiteral("text"), Voice::text(words.text)},
            {QStringLiteral("bold"), words.bold},
            {QStringLiteral("quiet"), words.tone == SheetTone::Quiet}};
}

} // namespace

QVariantMap plotPicture(const Plot &plot, const ScreenLook &look)
{
    if (!plot.empty.empty() || !(look.width > look.letter * 6.0) || !(look.height > look.letter * 6.0))
        return {};
    QFont font(look.family);
    font.setPixelSize(std::max(1, static_cast<int>(look.letter)));
    QFont heavy = font;
    heavy.setBold(true);
    const QFontMetricsF plain(font);
    const QFontMetricsF bold(heavy);
    const WordWidth width = [&](const std::string &text, bool isBold) {
        return std::ceil((isBold ? bold : plain).horizontalAdvance(Voice::text(text))) + 1.0;
    };
    const PlotSheet sheet = layPlot(plot, {look.width, look.height, look.letter, look.stroke}, width);
    QVariantList inks;
    for (const SheetInk &ink : sheet.inks)
        inks << std::visit(InkMap{}, ink);
    QVariantList words;
    for (const SheetWords &one : sheet.words)
        words << wordsMap(one);
    QVariantList xs;
    for (const PlotRow &row : plot.rows)
        xs << sheet.xOf(row.x);
    return {{QStringLiteral("width"), sheet.width},
            {QStringLiteral("height"), sheet.height},
            {QStringLiteral("letter"), sheet.letter},
            {QStringLiteral("lineHeight"), sheet.lineHeight},
            {QStringLiteral("left"), sheet.left},
            {QStringLiteral("top"), sheet.top},
            {QStringLiteral("across"), sheet.across},
            {QStringLiteral("up"), sheet.up},
            {QStringLiteral("inks"), inks},
            {QStringLiteral("words"), words},
            {QStringLiteral("xs"), xs}};
}

PlotVoice screenVoice(const Voice &voice)
{
    return {voice.texts,
            voice.units,
            {[&voice](CivilDate date) { return voice.date(date).toStdString(); },
             [&voice](double value, int decimals) { return voice.number(value, decimals).toStdString(); }}};
}

} // namespace snugwalk
