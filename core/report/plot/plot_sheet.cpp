// SPDX-License-Identifier: Apache-2.0
// Axes first, then what stands on them, then words where there is room.
#include "report/plot/plot_sheet.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "report/plot/sheet_labels.hpp"
#include "report/plot/sheet_pen.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t mostTicksUp = 9;
constexpr double leastUp = 10.0; ///< letters: a field lower than that tells nothing

class Layer {
public:
    Layer(const Plot &plot, const SheetSize &size, const WordWidth &width, const std::set<std::string> &inKey)
        : m_plot(plot), m_size(size), m_width(width), m_inKey(inKey)
    {
        m_sheet.width = size.width;
        m_sheet.height = size.height;
        m_sheet.letter = size.letter;
        m_sheet.lineHeight = size.letter * 1.3;
    }
    PlotSheet lay();
    [[nodiscard]] const std::vector<std::string> &homeless() const { return m_homeless; }

private:
    void head();
    void field();
    void ticksUp(const std::vector<PlotTick> &ticks);
    void ticksAcross();
    void labels();
    [[nodiscard]] double yOf(double v) const
    {
        return m_sheet.top + (1.0 - shareOf(m_plot.up, v)) * m_sheet.up;
    }
    [[nodiscard]] const std::vector<PlotTick> *levelUp(double up) const;
    [[nodiscard]] std::vector<SheetWords> labelsAcross(const std::vector<PlotTick> &ticks) const;
    void words(SheetWords one) { m_sheet.words.push_back(std::move(one)); }

    const Plot &m_plot;
    const SheetSize &m_size;
    const WordWidth &m_width;
    const std::set<std::string> &m_inKey;
    std::vector<std::string> m_homeless;
    PlotSheet m_sheet;
    double m_y = 0.0; ///< how far down the head reaches
};

// The unit over the axis, then the key, each in as many lines as it takes.
void Layer::head()
{
    for (const std::string &line : wrappedWords(m_plot.up.title, m_sheet.width, m_width)) {
        words({{0.0, m_y}, line, m_width(line, false), SheetSide::Start, SheetTone::Quiet, false});
        m_y += m_sheet.lineHeight;
    }
    m_y = layKey(m_sheet, m_plot, m_inKey, m_size, m_width, m_y);
}

const std::vector<PlotTick> *Layer::levelUp(double up) const
{
    const std::vector<PlotTick> *last = nullptr;
    for (const std::vector<PlotTick> &level : m_plot.up.levels) {
        last = &level;
        if (level.size() <= mostTicksUp &&
            up >= static_cast<double>(level.size()) * m_sheet.lineHeight * 1.25)
            return last;
    }
    return last;
}

void Layer::field()
{
    m_sheet.top = m_y + m_sheet.letter * 0.75;
    const double below = m_sheet.lineHeight + m_sheet.letter * 0.8;
    m_sheet.up = std::max(m_sheet.letter * leastUp, m_size.height - m_sheet.top - below);
    m_sheet.height = m_sheet.top + m_sheet.up + below;
    const std::vector<PlotTick> *level = levelUp(m_sheet.up);
    double widest = 0.0;
    if (level != nullptr) {
        for (const PlotTick &tick : *level)
            widest = std::max(widest, m_width(tick.text, false));
    }
    m_sheet.left = widest + m_sheet.letter * 0.6;
    m_sheet.across = std::max(m_sheet.letter * 4.0, m_sheet.width - m_sheet.left - m_sheet.letter * 0.5);
    m_sheet.fromX = m_plot.across.from;
    m_sheet.toX = m_plot.across.to;
    if (level != nullptr)
        ticksUp(*level);
}

void Layer::ticksUp(const std::vector<PlotTick> &ticks)
{
    for (const PlotTick &tick : ticks) {
        const double y = crisp(yOf(tick.at));
        m_sheet.inks.emplace_back(
            SheetLine{{{m_sheet.left, y}, {m_sheet.left + m_sheet.across, y}}, 1.0, SheetTone::Faint, {}});
        words({{m_sheet.left - m_sheet.letter * 0.5, y - m_sheet.lineHeight / 2.0},
               tick.text,
               m_width(tick.text, false),
               SheetSide::End,
               SheetTone::Quiet,
               false});
    }
}

std::vector<SheetWords> Layer::labelsAcross(const std::vector<PlotTick> &ticks) const
{
    std::vector<SheetWords> out;
    const double y =
        m_sheet.top + m_sheet.up + m_sheet.letter * 0.7; // under half a line of the lowest label up
    for (const PlotTick &tick : ticks) {
        const double width = m_width(tick.text, false);
        double x = m_sheet.xOf(tick.at + m_plot.across.shift);
        x = std::clamp(x, width / 2.0, std::max(width / 2.0, m_sheet.width - width / 2.0));
        out.push_back({{x, y}, tick.text, width, SheetSide::Middle, SheetTone::Quiet, false});
    }
    return out;
}

void Layer::ticksAcross()
{
    const double room = m_sheet.letter * 0.7;
    std::vector<SheetWords> told;
    const std::vector<PlotTick> *taken = nullptr;
    for (const std::vector<PlotTick> &level : m_plot.across.levels) {
        const std::vector<SheetWords> labels = labelsAcross(level);
        std::vector<SheetWords> apart; // those of the coarsest level that do not fit are left out
        for (const SheetWords &label : labels) {
            if (apart.empty() ||
                label.at.x - label.width / 2.0 >= apart.back().at.x + apart.back().width / 2.0 + room)
                apart.push_back(label);
        }
        taken = &level;
        told = apart;
        if (apart.size() == labels.size())
            break;
    }
    const double foot = m_sheet.top + m_sheet.up;
    if (taken != nullptr) {
        for (const PlotTick &tick : *taken) {
            const double x = crisp(m_sheet.xOf(tick.at + m_plot.across.shift));
            m_sheet.inks.emplace_back(
                SheetLine{{{x, foot}, {x, foot + m_sheet.letter * 0.35}}, 1.0, SheetTone::Quiet, {}});
        }
    }
    for (SheetWords &label : told)
        words(std::move(label));
    const double line = std::max(1.0, m_size.stroke * 0.75);
    m_sheet.inks.emplace_back(
        SheetLine{{{m_sheet.left, m_sheet.top}, {m_sheet.left, foot}, {m_sheet.left + m_sheet.across, foot}},
                  line,
                  SheetTone::Quiet,
                  {}});
}

void Layer::labels()
{
    LabelPlacer placer(m_sheet, m_width);
    const double right = m_sheet.left + m_sheet.across;
    for (const PlotLimit &limit : m_plot.limits) {
        if (!placer.alongLevel(limit.label, yOf(limit.y), m_sheet.left, right))
            m_homeless.push_back(limit.label);
    }
    if (m_plot.meeting &&
        !placer.near(m_plot.meeting->label, {m_sheet.xOf(m_plot.meeting->likely), yOf(m_plot.meeting->y)}))
        m_homeless.push_back(m_plot.meeting->label);
    for (const PlotLine &line : m_plot.lines) {
        if (line.label.empty() || line.spots.empty() || m_inKey.contains(line.label))
            continue;
        const PlotSpot &end = line.spots.back();
        if (!placer.near(line.label, {m_sheet.xOf(end.x), yOf(end.y)}))
            m_homeless.push_back(line.label);
    }
    if (m_plot.upright)
        placer.near(m_plot.upright->text, {m_sheet.xOf(m_plot.upright->at), m_sheet.top + m_sheet.letter});
}

PlotSheet Layer::lay()
{
    head();
    field();
    ticksAcross();
    Pen pen(m_sheet, m_size, m_plot);
    pen.draw();
    labels();
    return m_sheet;
}

} // namespace

double shareOf(const PlotAxis &axis, double value)
{
    if (!axis.log)
        return (value - axis.from) / (axis.to - axis.from);
    return value > axis.from ? std::log(value / axis.from) / std::log(axis.to / axis.from) : 0.0;
}

PlotSheet layPlot(const Plot &plot, const SheetSize &size, const WordWidth &wordWidth)
{
    std::set<std::string> inKey;
    for (const PlotLine &line : plot.lines) {
        if ((!plot.bars.empty() || !line.joined) && !line.label.empty())
            inKey.insert(line.label); // beside bars or loose spots a label would belong to one of them
    }
    for (;;) { // each turn moves one label at least into the key, so it ends
        Layer layer(plot, size, wordWidth, inKey);
        PlotSheet sheet = layer.lay();
        const std::size_t before = inKey.size();
        inKey.insert(layer.homeless().begin(), layer.homeless().end());
        if (inKey.size() == before)
            return sheet;
    }
}

WordWidth roughWordWidth(double letter)
{
    return [letter](const std::string &text, bool bold) {
        double ems = 0.0;
        for (const char c : text) {
            const auto byte = static_cast<unsigned char>(c);
            if ((byte & 0xC0U) == 0x80U)
                continue; // goes on a letter that is counted
            ems += byte >= 0x80                                               ? 0.61
                   : c >= '0' && c <= '9'                                     ? 0.556
                   : c == 'm' || c == 'M' || c == 'w' || c == 'W' || c == '%' ? 0.95
                   : c == ' ' || c == '.' || c == ',' || c == ':' || c == ';' || c == 'i' || c == 'l' ||
                           c == 'j' || c == 't' || c == 'f' || c == '\'' || c == 'I'
                       ? 0.29
                   : c >= 'A' && c <= 'Z' ? 0.78
                                          : 0.56;
        }
        return ems * letter * (bold ? 1.1 : 1.0);
    };
}

} // namespace snugwalk
