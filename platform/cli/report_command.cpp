// SPDX-License-Identifier: Apache-2.0
// report: one HTML page with drawing and photos, to read, print or send.
#include "cli/answers.hpp"
#include "cli/commands.hpp"
#include "html/report_html.hpp"
#include "logbook/files.hpp"
#include "logbook/photo_store.hpp"

namespace snugwalk::cli {
namespace {

Result<Answer> report(Session &session, const std::string &file)
{
    Result<Standing> now = standing(session);
    if (!now)
        return now.error();
    const PhotoStore store((*session.book())->photoFolder());
    const auto thumbnail = [&](const Photo &photo) -> std::optional<std::string> {
        const auto hash = Hash::parse(photo.hash);
        const Result<std::string> bytes = hash ? store.thumbnail(*hash) : Result<std::string>(Error{});
        return bytes ? std::optional(*bytes) : std::nullopt;
    };
    const Report made = makeReport(session.catalogue(), std::move(now).value());
    const std::string page =
        html::reportPage(made, session.texts(), thumbnail, {session.units(), session.globals().language});
    SNUG_TRY(replaceFile(file, page));
    return Answer{Value::Map{{"report", file}, {"bytes", page.size()}, {"findings", made.findings.size()}},
                  "written to " + file + "\n"};
}

} // namespace

void addReportCommand(CLI::App &app, Registry &registry)
{
    CLI::App *sub =
        app.add_subcommand("report", "one HTML page: state, findings with photos, what changed, what is due");
    auto file = std::make_shared<std::string>("report.html");
    sub->add_option("--out", *file, "where to write it (default: report.html)");
    registry.add(*sub, "  snugwalk report --out heron.html --units us",
                 [file](Session &s) { return report(s, *file); });
}

} // namespace snugwalk::cli
