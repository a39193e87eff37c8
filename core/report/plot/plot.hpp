// SPDX-License-Identifier: Apache-2.0
// A plot as data, in words of one language: what it shows, before anyone lays it out or draws it.
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace snugwalk {

/// A mark at a spot. Told by shape; a colour only goes with it.
enum class PlotShape {
    Dot,    ///< a value
    Ring,   ///< a value of what was replaced since
    Square, ///< a value that lies far off and is left out
    Half,   ///< watch: half disc, flat side down
    Wedge,  ///< mend soon: right-angled, slope to the left
    Block   ///< hold: filled square with a bar across
};
/// Of lines: solid is what was, dashes are what is not seen yet.
enum class PlotStroke { Solid, Thin, Dashes };
/// Of bars: readable in greyscale by their pattern.
enum class PlotFill { Solid, Hatch, Open };

struct PlotTick {
    double at = 0.0;
    std::string text;
};

/// Along (days since 1970-01-01) or up (the unit of the title).
struct PlotAxis {
    std::string title; ///< with its unit; empty for dates
    double from = 0.0, to = 1.0;
    bool log = false; ///< up alone: each step is a multiple; `from` above 0
    /// From fine to coarse; whoever lays it out takes the finest whose labels leave each other room.
    std::vector<std::vector<PlotTick>> levels;
    double shift = 0.0; ///< by which ticks are drawn further on: half a bar, where bars begin at the tick
};

struct PlotSpot {
    double x = 0.0, y = 0.0;
    PlotShape shape = PlotShape::Dot;
    std::optional<double> low = std::nullopt, high = std::nullopt; ///< whiskers
};
struct PlotLine {
    std::string label; ///< stands at the line; may be empty
    std::vector<PlotSpot> spots;
    PlotStroke stroke = PlotStroke::Solid;
    bool marked = true; ///< whether spots have their shape
    bool joined = true; ///< whether a line runs through them
};
struct PlotBar {
    double from = 0.0, to = 0.0, y = 0.0;
    std::optional<double> low = std::nullopt, high = std::nullopt;
};
struct PlotBars {
    std::string label;
    PlotFill fill = PlotFill::Solid;
    std::vector<PlotBar> bars;
};
struct PlotBand {
    struct Edge {
        double x = 0.0, low = 0.0, high = 0.0;
    };
    std::vector<Edge> edges;
};
/// A level that is not to be crossed, or that something is held against.
struct PlotLimit {
    double y = 0.0;
    std::string label; ///< with the kind of its source
};
/// Where a line is likely to meet a limit: dashes to a ring at `likely`, uprights at `early` and `late`.
struct PlotMeeting {
    double fromX = 0.0, fromY = 0.0;
    double early = 0.0, likely = 0.0, late = 0.0;
    double y = 0.0;
    std::string label;
};
struct PlotKey {
    PlotShape shape = PlotShape::Dot;
    std::string text;
};

/// The numbers behind it, oldest first; cells are words with their units.
struct PlotRow {
    double x = 0.0;
    std::vector<std::string> cells;
    std::vector<std::string> data; ///< the same for programs: ISO dates, plain numbers
};

struct Plot {
    std::string slug; ///< what a file is named by: weathering, tread-depth
    std::string title;
    std::string about;              ///< what one sees in it, in a sentence
    std::vector<std::string> notes; ///< how it was made, what is left out
    PlotAxis across, up;
    std::vector<PlotBand> bands;
    std::vector<PlotBars> bars;
    std::vector<PlotLine> lines;
    std::vector<PlotLimit> limits;
    std::optional<PlotMeeting> meeting = std::nullopt;
    std::optional<PlotTick> upright = std::nullopt; ///< today
    std::vector<PlotKey> keys;                      ///< what shapes mean, where no label at a line can say it
    std::vector<std::string> head;                  ///< of the table
    std::vector<PlotRow> rows;
    std::vector<std::string> dataHead; ///< names and units of `PlotRow::data`, English
    bool cut = false;                  ///< months further back were left out
    /// What brings data, where there is none; then nothing else of it is drawn.
    std::string empty;
};

} // namespace snugwalk
