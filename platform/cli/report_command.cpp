// SPDX-License-Identifier: Apache-2.0
// report: one HTML page with drawing and photos, to read, print or send.
#include "cli/answers.hpp"
#include "cli/commands.hpp"
#include "data/embedded.hpp"
#include "html/document_html.hpp"
#include "image/plain_codec.hpp"
#include "logbook/chain_heads.hpp"
#include "logbook/files.hpp"
#include "logbook/query.hpp"
#include "papers/papers.hpp"

namespace snugwalk::cli {
namespace {

struct Wish {
    std::string file = "report.html";
    std::string kind = "walk";
    std::string place = "left_out";
    bool ownData = false;
};

std::vector<std::string> kindNames()
{
    std::vector<std::string> names;
    for (const papers::PaperKind kind : papers::allPaperKinds())
        names.emplace_back(papers::slug(kind));
    return names;
}

Result<Document> document(Session &session, const Standing &now, const Wish &wish)
{
    Result<std::vector<Photo>> photos = photosOf(**session.book(), now.history.rig.id);
    if (!photos)
        return photos.error();
    Result<std::vector<ChainHead>> chains = chainHeads(**session.book());
    if (!chains)
        return chains.error();
    papers::PaperOptions options;
    options.units = session.units();
    options.language = session.globals().language;
    options.place = parsePlaceDetail(wish.place).value_or(PlaceDetail::LeftOut);
    options.by = session.globals().by;
    return papers::compose(*papers::parsePaperKind(wish.kind),
                           {session.catalogue(), session.texts(), productSupplies(), now,
                            std::move(photos).value(), std::move(chains).value()},
                           options);
}

Result<Answer> report(Session &session, const Wish &wish)
{
    const Result<Standing> now = standing(session);
    if (!now)
        return now.error();
    const Result<Document> made = document(session, *now, wish);
    if (!made)
        return made.error();
    const auto &coast = session.world().coast;
    const html::PageParts parts{session.texts(), session.units(),
                                html::pagePhotos(PhotoStore((*session.book())->photoFolder()),
                                                 &PlainCodec::shrunk,
                                                 wish.ownData ? html::OwnData::Kept : html::OwnData::LeftOut),
                                coast ? &*coast : nullptr};
    const std::string page = html::documentPage(*made, parts);
    SNUG_TRY(replaceFile(wish.file, page));
    return Answer{Value::Map{{"report", wish.file},
                             {"kind", wish.kind},
                             {"bytes", page.size()},
                             {"findings", now->state.open.size()}},
                  "written to " + wish.file + "\n"};
}

} // namespace

void addReportCommand(CLI::App &app, Registry &registry)
{
    CLI::App *sub = app.add_subcommand(
        "report", "one HTML page: state, findings with photos, what changed, what is due; or another kind");
    auto wish = std::make_shared<Wish>();
    sub->add_option("--out", wish->file, "where to write it (default: report.html)");
    sub->add_option("--kind", wish->kind, "which report (default: walk)")->check(CLI::IsMember(kindNames()));
    sub->add_option("--place", wish->place, "positions: left_out (default), coarse (about 5 km), exact")
        ->check(CLI::IsMember({"left_out", "coarse", "exact"}));
    sub->add_flag("--photo-data", wish->ownData, "photos keep what the camera wrote into them");
    registry.add(*sub,
                 "  snugwalk report --out heron.html --units us\n"
                 "  snugwalk report --kind work_order --out order.html",
                 [wish](Session &s) { return report(s, *wish); });
}

} // namespace snugwalk::cli
