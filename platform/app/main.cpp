// SPDX-License-Identifier: Apache-2.0
// The field app. No exception leaves it.
#include <cstdio>
#include <exception>

#include <QGuiApplication>
#include <QQuickStyle>

#include "app_run.hpp"

namespace {

constexpr int bugExitCode = 70;

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
    try {
        return run(argc, argv);
    } catch (const std::exception &fault) {
        std::fprintf(stderr, "snugwalk-app: %s\n", fault.what());
    } catch (...) {
        std::fprintf(stderr, "snugwalk-app: unknown fault\n");
    }
    return bugExitCode;
}
