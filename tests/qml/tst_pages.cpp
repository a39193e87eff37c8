// SPDX-License-Identifier: Apache-2.0
// Runs the Qt Quick tests of this folder against the stand-in models.
#include <QQmlContext>
#include <QQmlEngine>
#include <QtQuickTest>

#include "flat_photos.hpp"
#include "rows_model.hpp"

namespace {

class Setup : public QObject {
    Q_OBJECT
public Q_SLOTS:
    void qmlEngineAvailable(QQmlEngine *engine)
    {
        snugwalk::RowsModel::registerType();
        engine->addImportPath(QStringLiteral(":/qt/qml"));
        engine->addImageProvider(QStringLiteral("photo"), new snugwalk::FlatPhotos);
    }
};

} // namespace

QUICK_TEST_MAIN_WITH_SETUP(pages, Setup)

#include "tst_pages.moc"
