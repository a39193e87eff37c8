// SPDX-License-Identifier: Apache-2.0
// Shows the next picture within `start`, copies it within `take`.
#include "camera/recorded_camera.hpp"

#include <QFile>
#include <QImageReader>

namespace snugwalk {

void RecordedCamera::start()
{
    QImageReader reader(m_files[m_next]);
    reader.setAutoTransform(true);
    Q_EMIT frame(reader.read());
}

void RecordedCamera::take(const QString &file)
{
    if (!QFile::copy(m_files[m_next], file)) {
        Q_EMIT failed();
        return;
    }
    m_next = (m_next + 1) % m_files.size();
    Q_EMIT taken(file);
    start();
}

} // namespace snugwalk
