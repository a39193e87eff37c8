// SPDX-License-Identifier: Apache-2.0
// Pages of the report that is looked at, for QML: image://report/<serial>/<page>.
#pragma once

#include <memory>
#include <mutex>
#include <vector>

#include <QQuickImageProvider>

namespace snugwalk {

/// The newest pages alone; put by the thread that shows, taken by Qt's image thread.
class ReportSheets {
public:
    void put(int serial, std::vector<QImage> pages);
    /// Empty when newer pages came meanwhile.
    [[nodiscard]] QImage take(int serial, int page) const;

private:
    mutable std::mutex m_guard;
    int m_serial = 0;
    std::vector<QImage> m_pages;
};

class ReportPictures : public QQuickImageProvider {
public:
    explicit ReportPictures(std::shared_ptr<const ReportSheets> sheets);
    QImage requestImage(const QString &id, QSize *size, const QSize &requested) override;

private:
    std::shared_ptr<const ReportSheets> m_sheets;
};

} // namespace snugwalk
