// SPDX-License-Identifier: Apache-2.0
// A list model over plain rows that keeps scroll position and focus: changes are told by key.
#pragma once

#include <algorithm>
#include <utility>
#include <vector>

#include <QAbstractListModel>

namespace snugwalk {

/// `Row` has a `QString key`, unlike any other row's, and `==`. Rows hold what is displayed.
template <typename Row>
class RowModel : public QAbstractListModel {
public:
    struct Role {
        const char *name;
        QVariant (*value)(const Row &row);
        /// Where making the value costs more than looking at what it is made of.
        bool (*same)(const Row &a, const Row &b) = nullptr;
    };

    RowModel(std::vector<Role> roles, QObject *parent) : QAbstractListModel(parent), m_roles(std::move(roles))
    {}

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override
    {
        return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override
    {
        const int at = role - Qt::UserRole;
        const bool known = at >= 0 && at < static_cast<int>(m_roles.size());
        if (!known || !checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid))
            return {};
        return m_roles[static_cast<std::size_t>(at)].value(rowAt(index.row()));
    }
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override
    {
        QHash<int, QByteArray> names;
        for (std::size_t i = 0; i < m_roles.size(); ++i)
            names.insert(Qt::UserRole + static_cast<int>(i), m_roles[i].name);
        return names;
    }
    [[nodiscard]] const std::vector<Row> &rows() const { return m_rows; }

    /// Removes, moves, inserts and changes rows until they are `wanted`.
    void assign(std::vector<Row> wanted)
    {
        dropMissing(wanted);
        for (std::size_t i = 0; i < wanted.size(); ++i)
            place(static_cast<int>(i), std::move(wanted[i]));
    }

private:
    [[nodiscard]] const Row &rowAt(int row) const { return m_rows[static_cast<std::size_t>(row)]; }
    static auto withKey(const QString &key)
    {
        return [&key](const Row &row) { return row.key == key; };
    }

    void dropMissing(const std::vector<Row> &wanted)
    {
        for (int i = static_cast<int>(m_rows.size()) - 1; i >= 0; --i) {
            if (std::any_of(wanted.begin(), wanted.end(), withKey(rowAt(i).key)))
                continue;
            beginRemoveRows({}, i, i);
            m_rows.erase(m_rows.begin() + i);
            endRemoveRows();
        }
    }

    void place(int at, Row row)
    {
        const auto found = std::find_if(m_rows.begin() + at, m_rows.end(), withKey(row.key));
        if (found == m_rows.end()) {
            beginInsertRows({}, at, at);
            m_rows.insert(m_rows.begin() + at, std::move(row));
            endInsertRows();
            return;
        }
        const int from = static_cast<int>(found - m_rows.begin());
        if (from != at) {
            beginMoveRows({}, from, from, {}, at);
            std::rotate(m_rows.begin() + at, found, found + 1);
            endMoveRows();
        }
        change(at, std::move(row));
    }

    void change(int at, Row row)
    {
        Row &now = m_rows[static_cast<std::size_t>(at)];
        QList<int> changed;
        for (std::size_t i = 0; i < m_roles.size(); ++i) {
            const Role &role = m_roles[i];
            if (role.same != nullptr ? !role.same(now, row) : role.value(now) != role.value(row))
                changed << Qt::UserRole + static_cast<int>(i);
        }
        now = std::move(row);
        if (!changed.isEmpty())
            Q_EMIT dataChanged(index(at), index(at), changed);
    }

    std::vector<Role> m_roles;
    std::vector<Row> m_rows;
};

} // namespace snugwalk
