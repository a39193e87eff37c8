// SPDX-License-Identifier: Apache-2.0
// The peer of the app's start: a Qt Quick window with nothing in it, gone after its first frame.
#include <cstdio>

#include <QGuiApplication>
#include <QQuickView>
#include <QUrl>

int main(int argc, char **argv)
{
    QGuiApplication app(argc, argv);
    QQuickView view;
    view.resize(412, 892);
    QObject::connect(&view, &QQuickWindow::frameSwapped, &app, [] {
        std::printf("usable\n");
        std::fflush(stdout);
        QGuiApplication::quit();
    });
    view.show();
    return QGuiApplication::exec();
}
