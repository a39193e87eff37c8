// SPDX-License-Identifier: Apache-2.0
// A report in words of one language, in reading order, before anyone lays it out: what pages, files and the
// app's preview are drawn from.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "base/geo.hpp"
#include "concern/concern.hpp"
#include "report/plot/plot.hpp"
#include "rig/rig.hpp"
#include "walk/drawing.hpp"
#include "walk/walk.hpp"

namespace snugwalk {

/// 2 for a part of the report, 3 below it; 1 is the title's.
struct HeadingBlock {
    int level = 2;
    std::string text;
};

enum class TextTone {
    Plain,
    State, ///< what was looked at and found: larger
    Quiet  ///< dates, sources, what is left out
};
struct TextBlock {
    std::string text;
    TextTone tone = TextTone::Plain;
};

/// Rows of as many cells as `head`; `numeric` has one flag a column, right-aligned where true.
struct TableBlock {
    std::vector<std::string> head;
    std::vector<bool> numeric;
    std::vector<std::vector<std::string>> rows;
};

/// A finding in a list: its balloon's number, its shape, what and where in words.
struct FindingBlock {
    int number = 0;
    Call call = Call::None;
    std::string title;
    std::vector<std::string> lines;
};

/// Lines to tick or fill in by hand: a box, the words, what is known already behind them.
struct TickBlock {
    std::vector<std::string> lines;
};

/// In full and in a frame of its own, never on another page than the work it belongs to where that can be
/// kept.
struct CautionBlock {
    std::vector<std::string> lines;
};

struct PhotoPicture {
    Photo photo;
    std::optional<Drawing> drawing; ///< laid over it
    std::string caption;
};
struct PhotosBlock {
    std::vector<PhotoPicture> photos;
};
/// Then and now of one place: side by side on paper, pressed to change where that can be.
struct PairBlock {
    std::string title;
    std::optional<PhotoPicture> then;
    std::optional<PhotoPicture> now;
};

/// What stands at a spot of the drawing: the shape of a finding's call, or that of a place where things were
/// found, one of them open still or all of them mended or gone.
enum class SpotShape { Call, EverOpen, EverMended };
/// The rig's drawing with a numbered shape at each spot.
struct RigSpot {
    int number = 0;
    Call call = Call::None;
    RigPlace place;
    SpotShape shape = SpotShape::Call;
    int times = 0; ///< how often something was found there, with the latter two
};
struct RigDrawingBlock {
    Rig rig;
    std::vector<RigSpot> spots;
    std::string caption;
};

/// Coast and borders of our own data under lines and numbered spots.
struct MapSpot {
    int number = 0;
    std::optional<Call> call;
    GeoPoint place;
    std::string text;
};
struct MapBlock {
    std::vector<std::vector<GeoPoint>> lines;
    std::vector<MapSpot> spots;
    std::string caption;
};

/// Lines or bars over time, with what one sees in them and how they were made.
struct PlotBlock {
    Plot plot;
};

/// Space to write by hand: `rows` empty lines behind a word.
struct BlankBlock {
    std::string label;
    int rows = 1;
};
/// What a finger drew to sign: lines of spots, 0 to 1 across from the left, and down in the same measure.
struct Signature {
    struct Spot {
        double across = 0;
        double down = 0;
        friend bool operator==(const Spot &, const Spot &) = default;
    };
    std::vector<std::vector<Spot>> lines;
    std::string placeAndDate; ///< in words
    friend bool operator==(const Signature &, const Signature &) = default;
};
/// A signature is as wide as the line it stands on and no higher than this share of it.
constexpr double signatureHeight = 0.3;

/// A line to sign on, with place and date; or what was signed on a screen.
struct SignatureBlock {
    std::string who;
    std::optional<Signature> drawn = std::nullopt;
};

struct PageBreakBlock {};

using Block =
    std::variant<HeadingBlock, TextBlock, TableBlock, FindingBlock, TickBlock, CautionBlock, PhotosBlock,
                 PairBlock, RigDrawingBlock, MapBlock, PlotBlock, BlankBlock, SignatureBlock, PageBreakBlock>;

/// Whole. `footer` stands at the end of a page that scrolls and at the foot of each that is printed.
struct Document {
    std::string language; ///< BCP 47
    std::string title;
    std::string subtitle;
    std::vector<Block> blocks;
    std::string footer;
};

} // namespace snugwalk
