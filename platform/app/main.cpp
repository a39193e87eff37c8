// SPDX-License-Identifier: Apache-2.0
// The field app. No exception leaves it.
#include <cstdio>
#include <exception>

#include <QGuiApplication>
#include <QQuickStyle>

#include "app_run.hpp"

#ifdef __GLIBC__
#include <malloc.h>
#endif

namespace {

constexpr int bugExitCode = 70;

// By itself glibc gives each thread a heap of its own, which grows page by page with a call of the system
// each time and never gets smaller; three threads start here at once.
void shareOneHeap()
{
#ifdef __GLIBC__
    constexpr int growth = 1 << 20; // bytes asked for at once
    (void)mallopt(M_ARENA_MAX, 1);
    (void)mallopt(M_TOP_PAD, growth);
#endif
}

int run(int argc, char **argv)
{
    QGuiApplication app(argc, argv);
    QGuiApplication::setApplicationName(QStringLiteral("snugwalk"));
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Snugwalk"));
    QGuiApplication::setApplicationVersion(QStringLiteral(SNUGWALK_VERSION));
    QGuiApplication::setDesktopFileName(QStringLiteral("org.snugwalk.Snugwalk"));
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    return snugwalk::runApp(QGuiApplication::arguments());
}

} // namespace

int main(int argc, char **argv)
{
    shareOneHeap();
    try {
        return run(argc, argv);
    } catch (const std::exception &fault) {
        std::fprintf(stderr, "snugwalk-app: %s\n", fault.what());
    } catch (...) {
        std::fprintf(stderr, "snugwalk-app: unknown fault\n");
    }
    return bugExitCode;
}
