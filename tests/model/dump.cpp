// SPDX-License-Identifier: Apache-2.0
// Reading models through their meta-objects, as QML does.
#include "dump.hpp"

#include <cmath>

#include <QAbstractItemModel>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QMetaProperty>
#include <QtTest>

namespace snugwalk::test {
namespace {

QJsonValue jsonOf(const QVariant &value)
{
    if (value.typeId() == QMetaType::Double && std::isnan(value.toDouble()))
        return QJsonValue::Null;
    return QJsonValue::fromVariant(value);
}

QJsonArray rowsOf(const QAbstractItemModel &model, int rowLimit)
{
    QJsonArray rows;
    for (int row = 0; row < std::min(model.rowCount(), rowLimit); ++row) {
        QJsonObject cells;
        const QHash<int, QByteArray> roles = model.roleNames();
        for (auto role = roles.begin(); role != roles.end(); ++role)
            cells[QLatin1String(role.value())] = jsonOf(model.data(model.index(row, 0), role.key()));
        rows << cells;
    }
    return rows;
}

QJsonObject objectOf(const QObject &model, int rowLimit)
{
    QJsonObject object;
    const QMetaObject &meta = *model.metaObject();
    for (int i = meta.propertyOffset(); i < meta.propertyCount(); ++i) {
        const QMetaProperty property = meta.property(i);
        const QVariant value = property.read(&model);
        const auto *list = qobject_cast<QAbstractItemModel *>(value.value<QObject *>());
        object[QLatin1String(property.name())] =
            list == nullptr ? jsonOf(value) : QJsonValue(rowsOf(*list, rowLimit));
    }
    return object;
}

} // namespace

QByteArray dumpOf(const QObject &model, int rowLimit)
{
    return QJsonDocument(objectOf(model, rowLimit)).toJson();
}

bool isAsKept(const QByteArray &dump, const QByteArray &name)
{
    QFile kept(QStringLiteral(SNUGWALK_SOURCE_DIR "/tests/model/golden/%1.json").arg(QLatin1String(name)));
    if (qEnvironmentVariableIsSet("SNUGWALK_WRITE_GOLDEN")) {
        if (kept.open(QIODevice::WriteOnly))
            kept.write(dump);
        return false;
    }
    if (!kept.open(QIODevice::ReadOnly))
        return false;
    const QByteArray wanted = kept.readAll();
    const QList<QByteArray> is = dump.split('\n');
    const QList<QByteArray> was = wanted.split('\n');
    for (qsizetype line = 0; line < std::max(is.size(), was.size()); ++line) {
        if (is.value(line) == was.value(line))
            continue;
        qInfo("%s, line %lld: kept %s, now %s", name.constData(), static_cast<long long>(line + 1),
              was.value(line).constData(), is.value(line).constData());
        return false;
    }
    return true;
}

} // namespace snugwalk::test
