// SPDX-License-Identifier: Apache-2.0
// Trying one place after another, and taking the one that hides least.
#include "report/plot/sheet_labels.hpp"

#include <algorithm>
#include <cmath>

#include "report/plot/sheet_pen.hpp"

namespace snugwalk {
namespace {

constexpr int placesAlong = 12;

struct KeyEntry {
    std::string text;
    const PlotBars *bars = nullptr;
    const PlotKey *key = nullptr;
    const PlotLimit *limit = nullptr;
    const PlotLine *line = nullptr;
};

std::vector<KeyEntry> entriesOf(const Plot &plot, const std::set<std::string> &inKey)
{
    std::vector<KeyEntry> entries;
    if (plot.bars.size() > 1 || (!plot.bars.empty() && !plot.lines.empty())) {
        for (const PlotBars &bars : plot.bars)
            entries.push_back({bars.label, &bars});
    }
    for (const PlotKey &key : plot.keys)
        entries.push_back({key.text, nullptr, &key});
    for (const PlotLimit &limit : plot.limits) {
        if (inKey.contains(limit.label))
            entries.push_back({limit.label, nullptr, nullptr, &limit});
    }
    for (const PlotLine &line : plot.lines) {
        if (!line.label.empty() && inKey.contains(line.label))
            entries.push_back({line.label, nullptr, nullptr, nullptr, &line});
    }
    if (plot.meeting && inKey.contains(plot.meeting->label))
        entries.push_back({plot.meeting->label});
    return entries;
}

void drawLineSample(PlotSheet &sheet, const PlotLine &line, const SheetSize &size, double x, double middle)
{
    const double end = x + size.letter * 1.2;
    if (line.joined)
        sheet.inks.emplace_back(pathLine({{x, middle}, {end, middle}}, line.stroke, size));
    if (line.marked && !line.spots.empty())
        sheet.inks.emplace_back(
            SheetShape{{(x + end) / 2.0, middle}, size.letter * 0.62, line.spots.front().shape});
}

void drawSample(PlotSheet &sheet, const KeyEntry &entry, const SheetSize &size, double x, double middle)
{
    const double side = size.letter * 0.8;
    if (entry.bars != nullptr)
        drawBar(sheet, {x, middle - side / 2.0}, {x + side * 1.5, middle + side / 2.0}, entry.bars->fill,
                size);
    else if (entry.key != nullptr)
        sheet.inks.emplace_back(SheetShape{{x + side * 0.75, middle}, side, entry.key->shape});
    else if (entry.limit != nullptr)
        sheet.inks.emplace_back(limitLine(x, x + side * 1.5, middle, size));
    else if (entry.line != nullptr)
        drawLineSample(sheet, *entry.line, size, x, middle);
    else
        sheet.inks.emplace_back(SheetShape{{x + side * 0.75, middle}, side, PlotShape::Ring});
}

double overlap(double a1, double a2, double b1, double b2)
{
    return std::max(0.0, std::min(a2, b2) - std::max(a1, b1));
}

} // namespace

std::vector<std::string> wrappedWords(const std::string &text, double width, const WordWidth &wordWidth,
                                      bool bold)
{
    std::vector<std::string> lines;
    std::string line;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find(' ', at), text.size());
        const std::string word = text.substr(at, end - at);
        at = end + 1;
        const std::string longer = line.empty() ? word : line + " " + word;
        if (!line.empty() && wordWidth(longer, bold) > width) {
            lines.push_back(line);
            line = word;
        } else {
            line = longer;
        }
    }
    if (!line.empty())
        lines.push_back(line);
    return lines;
}

double layKey(PlotSheet &sheet, const Plot &plot, const std::set<std::string> &inKey, const SheetSize &size,
              const WordWidth &wordWidth, double y)
{
    const std::vector<KeyEntry> entries = entriesOf(plot, inKey);
    if (entries.empty())
        return y;
    const double sample = size.letter * 1.6;
    const double gap = size.letter;
    double x = 0.0;
    for (const KeyEntry &entry : entries) {
        const double whole = sample + wordWidth(entry.text, false);
        if (x > 0.0 && x + whole > sheet.width) {
            x = 0.0;
            y += sheet.lineHeight;
        }
        drawSample(sheet, entry, size, x, y + sheet.lineHeight / 2.0);
        for (const std::string &line : wrappedWords(entry.text, sheet.width - sample, wordWidth)) {
            sheet.words.push_back(
                {{x + sample, y}, line, wordWidth(line, false), SheetSide::Start, SheetTone::Ink, false});
            y += sheet.lineHeight;
        }
        y -= sheet.lineHeight; // the next one may stand beside
        x += whole + gap;
    }
    return y + sheet.lineHeight;
}

LabelPlacer::LabelPlacer(PlotSheet &sheet, const WordWidth &wordWidth) : m_sheet(sheet), m_width(wordWidth)
{
    for (const SheetInk &ink : sheet.inks)
        hinder(ink);
}

void LabelPlacer::hinder(const SheetInk &ink)
{
    const double step = m_sheet.letter * 0.5;
    if (const auto *shape = std::get_if<SheetShape>(&ink)) {
        const double half = shape->size / 2.0;
        m_shapes.push_back({shape->at.x - half, shape->at.y - half, shape->at.x + half, shape->at.y + half});
    } else if (const auto *line = std::get_if<SheetLine>(&ink);
               line != nullptr && line->tone != SheetTone::Faint) {
        for (std::size_t i = 1; i < line->spots.size(); ++i) {
            const SheetSpot a = line->spots[i - 1];
            const SheetSpot b = line->spots[i];
            const double pieces = std::max(1.0, std::ceil(std::hypot(b.x - a.x, b.y - a.y) / step));
            for (double k = 0.0; k < pieces; k += 1.0) {
                const double x1 = a.x + (b.x - a.x) * k / pieces;
                const double y1 = a.y + (b.y - a.y) * k / pieces;
                const double x2 = a.x + (b.x - a.x) * (k + 1.0) / pieces;
                const double y2 = a.y + (b.y - a.y) * (k + 1.0) / pieces;
                m_inks.push_back({std::min(x1, x2) - 0.5, std::min(y1, y2) - 0.5, std::max(x1, x2) + 0.5,
                                  std::max(y1, y2) + 0.5});
            }
        }
    }
}

LabelPlacer::Box LabelPlacer::boxOf(const SheetWords &words) const
{
    const double left = words.side == SheetSide::Start    ? words.at.x
                        : words.side == SheetSide::Middle ? words.at.x - words.width / 2.0
                                                          : words.at.x - words.width;
    return {left, words.at.y, left + words.width, words.at.y + m_sheet.lineHeight};
}

bool LabelPlacer::put(const std::string &label, const std::vector<SheetSpot> &corners)
{
    const double width = m_width(label, true);
    const double least = m_sheet.left + m_sheet.letter * 0.3;
    const double most = m_sheet.width - width;
    double best = 1e300;
    SheetSpot where;
    if (most < least)
        return false; // wider than the field
    for (const SheetSpot &corner : corners) {
        const SheetSpot at{std::clamp(corner.x, least, most), corner.y};
        const Box box{at.x - 2.0, at.y, at.x + width + 2.0, at.y + m_sheet.lineHeight};
        if (box.top < m_sheet.top - m_sheet.letter * 0.7 || box.bottom > m_sheet.top + m_sheet.up)
            continue;
        const auto hidden = [&](const Box &other) {
            return overlap(box.left, box.right, other.left, other.right) *
                   overlap(box.top, box.bottom, other.top, other.bottom);
        };
        const bool overWords = std::any_of(m_sheet.words.begin(), m_sheet.words.end(),
                                           [&](const SheetWords &one) { return hidden(boxOf(one)) > 0.0; });
        const bool overShape =
            std::any_of(m_shapes.begin(), m_shapes.end(), [&](const Box &one) { return hidden(one) > 0.0; });
        if (overWords || overShape)
            continue;
        double score = 0.0;
        for (const Box &ink : m_inks)
            score += hidden(ink);
        if (score < best - 1e-9) {
            best = score;
            where = at;
        }
    }
    if (best > 1e299)
        return false;
    m_sheet.words.push_back({where, label, width, SheetSide::Start, SheetTone::Ink, true});
    return true;
}

bool LabelPlacer::alongLevel(const std::string &label, double y, double left, double right)
{
    std::vector<SheetSpot> corners;
    const double width = m_width(label, true);
    const double over = y - m_sheet.lineHeight - m_sheet.letter * 0.2;
    const double under = y + m_sheet.letter * 0.25;
    for (int k = 0; k <= placesAlong; ++k) {
        const double x =
            left + m_sheet.letter * 0.4 + (right - width - left - m_sheet.letter * 0.4) * k / placesAlong;
        corners.push_back({x, over});
        corners.push_back({x, under});
    }
    return put(label, corners);
}

bool LabelPlacer::near(const std::string &label, SheetSpot spot)
{
    const double width = m_width(label, true);
    const double off = m_sheet.letter * 0.6;
    std::vector<SheetSpot> corners;
    for (const double away : {1.0, 2.0}) {
        const double above = spot.y - m_sheet.lineHeight - off * away;
        const double below = spot.y + off * away;
        for (const double x : {spot.x - width / 2.0, spot.x - width - off * away, spot.x + off * away})
            for (const double y : {above, below, spot.y - m_sheet.lineHeight / 2.0})
                corners.push_back({x, y});
    }
    return put(label, corners);
}

} // namespace snugwalk
