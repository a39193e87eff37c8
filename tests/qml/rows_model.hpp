// SPDX-License-Identifier: Apache-2.0
// Rows of any values, lists and NaN included, which QML's own ListModel cannot hold.
#pragma once

#include <QAbstractListModel>
#include <QVariantMap>
#include <QtQml/qqml.h>

namespace snugwalk {

class RowsModel : public QAbstractListModel {
    Q_OBJECT
    Q_PROPERTY(QVariantList rows READ rows WRITE setRows NOTIFY rowsChanged)
    Q_PROPERTY(int count READ count NOTIFY rowsChanged)
public:
    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] QVariantList rows() const { return m_rows; }
    [[nodiscard]] int count() const { return static_cast<int>(m_rows.size()); }
    void setRows(const QVariantList &rows)
    {
        beginResetModel();
        m_rows = rows;
        m_names = rows.isEmpty() ? QStringList() : rows.first().toMap().keys();
        endResetModel();
        Q_EMIT rowsChanged();
    }
    int rowCount(const QModelIndex &parent = {}) const override { return parent.isValid() ? 0 : count(); }
    QVariant data(const QModelIndex &index, int role) const override
    {
        const int at = role - Qt::UserRole - 1;
        if (!checkIndex(index, CheckIndexOption::IndexIsValid) || at < 0 || at >= m_names.size())
            return {};
        return m_rows[index.row()].toMap().value(m_names[at]);
    }
    QHash<int, QByteArray> roleNames() const override
    {
        QHash<int, QByteArray> names;
        for (int i = 0; i < m_names.size(); ++i)
            names.insert(Qt::UserRole + 1 + i, m_names[i].toUtf8());
        return names;
    }
    static void registerType() { qmlRegisterType<RowsModel>("Snugwalk.Mock", 1, 0, "RowsModel"); }

Q_SIGNALS:
    void rowsChanged();

private:
    QVariantList m_rows;
    QStringList m_names;
};

} // namespace snugwalk
