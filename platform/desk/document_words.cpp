// SPDX-License-Identifier: Apache-2.0
// What each block says aloud.
#include "desk/document_words.hpp"

#include "base/text.hpp"

namespace snugwalk {
namespace {

struct Speaker {
    std::string operator()(const HeadingBlock &b) const { return b.text + "\n"; }
    std::string operator()(const TextBlock &b) const { return b.text + "\n"; }
    std::string operator()(const TableBlock &b) const
    {
        std::string out = join(b.head, "; ") + "\n";
        for (const auto &row : b.rows)
            out += join(row, "; ") + "\n";
        return out;
    }
    std::string operator()(const FindingBlock &b) const
    {
        return (b.number > 0 ? std::to_string(b.number) + ": " : "") + b.title + "\n" + lines(b.lines);
    }
    std::string operator()(const TickBlock &b) const { return lines(b.lines); }
    std::string operator()(const CautionBlock &b) const { return lines(b.lines); }
    std::string operator()(const PhotosBlock &b) const
    {
        std::string out;
        for (const PhotoPicture &picture : b.photos)
            out += picture.caption + "\n";
        return out;
    }
    std::string operator()(const PairBlock &b) const
    {
        return b.title + "\n" + (b.then ? b.then->caption + "\n" : "") + (b.now ? b.now->caption + "\n" : "");
    }
    std::string operator()(const RigDrawingBlock &b) const { return b.caption + "\n"; }
    std::string operator()(const MapBlock &b) const { return b.caption + "\n"; }
    std::string operator()(const BlankBlock &b) const { return b.label + "\n"; }
    std::string operator()(const SignatureBlock &b) const { return b.who + "\n"; }
    std::string operator()(const PageBreakBlock &) const { return {}; }

    static std::string lines(const std::vector<std::string> &all) { return join(all, "\n") + "\n"; }
};

} // namespace

std::string documentWords(const Document &document)
{
    std::string out = document.title + "\n" + document.subtitle + "\n";
    for (const Block &block : document.blocks)
        out += std::visit(Speaker(), block);
    return out + document.footer;
}

} // namespace snugwalk
