// SPDX-License-Identifier: Apache-2.0
// From a name to a page, at the size it is shown.
#include "report_pictures.hpp"

namespace snugwalk {

void ReportSheets::put(int serial, std::vector<QImage> pages)
{
    const std::lock_guard lock(m_guard);
    m_serial = serial;
    m_pages = std::move(pages);
}

QImage ReportSheets::take(int serial, int page) const
{
    const std::lock_guard lock(m_guard);
    if (serial != m_serial || page < 0 || static_cast<std::size_t>(page) >= m_pages.size())
        return {};
    return m_pages[static_cast<std::size_t>(page)]; // shares the pixels
}

ReportPictures::ReportPictures(std::shared_ptr<const ReportSheets> sheets)
    : QQuickImageProvider(QQuickImageProvider::Image, QQmlImageProviderBase::ForceAsynchronousImageLoading),
      m_sheets(std::move(sheets))
{}

QImage ReportPictures::requestImage(const QString &id, QSize *size, const QSize &requested)
{
    QImage image = m_sheets->take(id.section(u'/', 0, 0).toInt(), id.section(u'/', 1).toInt());
    if (size != nullptr)
        *size = image.size();
    if (!image.isNull() && requested.width() > 0 && requested.width() < image.width())
        image = image.scaledToWidth(requested.width(), Qt::SmoothTransformation);
    return image;
}

} // namespace snugwalk
