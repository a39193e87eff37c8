// SPDX-License-Identifier: Apache-2.0
// Draws places of the app against the stand-in models: draw_pages OUT WxH THEME LANG SCALE PLACE...
#include <QCoreApplication>
#include <QDir>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQmlComponent>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTextStream>
#include <QTimer>
#include <QTranslator>

#include "flat_photos.hpp"
#include "rows_model.hpp"

namespace {

/// Lets delayed calls, asynchronous images and canvases settle.
void settle(QQuickWindow &window)
{
    for (int i = 0; i < 8; ++i) {
        QCoreApplication::processEvents();
        window.grabWindow();
    }
}

} // namespace

int main(int argc, char *argv[])
{
    QGuiApplication app(argc, argv);
    const QStringList words = app.arguments();
    if (words.size() < 7) {
        QTextStream(stderr) << "usage: draw_pages OUT WxH THEME LANG SCALE PLACE...\n";
        return 2;
    }
    QTranslator translator;
    const QString catalogue = QStringLiteral("snugwalk_%1").arg(words[4]);
    if (translator.load(catalogue, QStringLiteral(":/i18n")) ||
        translator.load(catalogue, app.applicationDirPath()))
        QCoreApplication::installTranslator(&translator);

    snugwalk::RowsModel::registerType();
    QQmlApplicationEngine engine;
    engine.addImportPath(QStringLiteral(":/qt/qml"));
    engine.addImageProvider(QStringLiteral("photo"), new snugwalk::FlatPhotos);
    QQmlComponent sessionMaker(&engine);
    sessionMaker.setData("import Snugwalk.Models\nSession {}", {});
    QObject *session = sessionMaker.create();
    if (session == nullptr) {
        QTextStream(stderr) << sessionMaker.errorString();
        return 1;
    }
    session->setProperty("theme", words[3]);
    session->setProperty("language", words[4]);
    session->setProperty("textScale", words[5].toDouble());
    QQmlComponent maker(&engine);
    maker.setData("import Snugwalk.App\nMain {}", {});
    auto *window = qobject_cast<QQuickWindow *>(
        maker.createWithInitialProperties({{QStringLiteral("session"), QVariant::fromValue(session)}}));
    if (window == nullptr) {
        QTextStream(stderr) << maker.errorString();
        return 1;
    }
    const QStringList size = words[2].split(u'x');
    window->resize(size[0].toInt(), size[1].toInt());
    QDir().mkpath(words[1]);
    auto *walk = session->property("walk").value<QObject *>();
    for (const QString &wanted : words.mid(6)) {
        const QStringList parts = wanted.split(u'+'); // "walk+showWheels", "share+sync.share.showOffer"
        const QStringList steps = parts.value(1).split(u'.');
        if (parts.size() > 1 && steps.size() == 1)
            QMetaObject::invokeMethod(walk, parts[1].toUtf8().constData());
        session->setProperty("hasRig", parts[0] != QLatin1String("empty"));
        window->setProperty("currentPlace", parts[0]);
        settle(*window);
        if (steps.size() > 1) { // once the page is there, for it begins anew
            QObject *model = session;
            for (const QString &step : steps.mid(0, steps.size() - 1))
                model = model->property(step.toUtf8().constData()).value<QObject *>();
            QMetaObject::invokeMethod(model, steps.last().toUtf8().constData());
            settle(*window);
        }
        window->grabWindow().save(QStringLiteral("%1/%2-%3-%4-%5-%6.png")
                                      .arg(words[1], wanted, words[2], words[3], words[4], words[5]));
    }
    return 0;
}
