// SPDX-License-Identifier: Apache-2.0
// The bench: tire pressure worked out from what was typed and from the rig's plates.
#pragma once

#include <map>

#include <QObject>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "snapshot.hpp"

namespace snugwalk {

class BenchModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(QVariantMap typed READ typed NOTIFY changed)
    Q_PROPERTY(QVariantList results READ results NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    Q_PROPERTY(QString caution READ caution NOTIFY changed)
public:
    explicit BenchModel(QObject *parent) : QObject(parent) {}

    /// {placard, maxPressure, pressureNow, temperatureNow, temperatureColdest, altitudeNow, altitudeThen}:
    /// as typed, else from the rig; empty where nothing is known.
    [[nodiscard]] QVariantMap typed() const;
    /// [{label, value, range, basis, source, warnings}]
    [[nodiscard]] QVariantList results() const { return m_results; }
    /// What stands in the way, and what to do; empty when nothing does.
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] QString caution() const;

    void show(const Shown &shown);
    /// An empty text goes back to what the rig says.
    Q_INVOKABLE void set(const QString &name, const QString &text);

Q_SIGNALS:
    void changed();

private:
    void work();

    Shown m_shown;
    std::map<QString, QString> m_typed;
    QVariantList m_results;
    QString m_problem;
};

} // namespace snugwalk
