// SPDX-License-Identifier: Apache-2.0
// Choosing between the window, the pictures of every page, and the self-test.
#include "app_run.hpp"

#include <cstdio>

#include <QGuiApplication>
#include <QQuickWindow>

#include "message_watch.hpp"
#include "options.hpp"
#include "paper_run.hpp"
#include "scratch_book.hpp"
#include "screens.hpp"
#include "self_test.hpp"
#include "wiring.hpp"

namespace snugwalk {
namespace {

int tell(const Error &error)
{
    std::fprintf(stderr, "snugwalk-app: %s%s%s\n%s\n", error.what.c_str(), error.where.empty() ? "" : ": ",
                 error.where.c_str(), error.act.c_str());
    return exitCode(error.code);
}

int finishWith(const Status &status) { return status ? 0 : tell(status.error()); }

int runScreens(Options options)
{
    const QString folder = options.screensFolder;
    const QString only = options.screensOnly;
    Result<ScratchBook> scratch = ScratchBook::copyOf(options.book);
    if (!scratch)
        return tell(scratch.error());
    options.book = scratch->file();
    Result<std::unique_ptr<Wiring>> wiring = Wiring::make(options, Wiring::Mode::Still);
    return wiring ? finishWith(drawScreens(**wiring, folder, only)) : tell(wiring.error());
}

int runSelfTest(Options options)
{
    Result<ScratchBook> scratch = ScratchBook::copyOf(options.book);
    if (!scratch)
        return tell(scratch.error());
    options.book = scratch->file();
    MessageWatch watch;
    Result<std::unique_ptr<Wiring>> wiring = Wiring::make(options, Wiring::Mode::Still);
    return wiring ? finishWith(selfTest(**wiring, watch)) : tell(wiring.error());
}

// What a speed measurement times: from the start to a drawn page with the logbook's content on it.
void leaveWhenUsable(Wiring &wiring)
{
    QObject::connect(&wiring.window(), &QQuickWindow::frameSwapped, qGuiApp, [&wiring] {
        if (!wiring.session().isLoaded())
            return;
        std::printf("usable\n");
        std::fflush(stdout);
        QGuiApplication::quit();
    });
}

} // namespace

int runApp(const QStringList &arguments)
{
    const Result<Options> options = readOptions(arguments);
    if (!options)
        return tell(options.error());
    if (options->help) {
        std::printf("%s", qPrintable(options->helpText));
        return 0;
    }
    if (!options->paper.isEmpty())
        return finishWith(writePaper(*options));
    if (!options->plot.isEmpty())
        return finishWith(writePlot(*options));
    if (!options->screensFolder.isEmpty())
        return runScreens(*options);
    if (options->selfTest)
        return runSelfTest(*options);
    Result<std::unique_ptr<Wiring>> wiring = Wiring::make(*options, Wiring::Mode::Live);
    if (!wiring)
        return tell(wiring.error());
    if (options->untilUsable)
        leaveWhenUsable(**wiring);
    return QGuiApplication::exec();
}

} // namespace snugwalk
