// SPDX-License-Identifier: Apache-2.0
// The worker's thread: opened late, closed after the last job.
#include "worker.hpp"

namespace snugwalk {

Worker::Worker(std::function<Result<Logbook>()> open, QObject *parent)
    : QObject(parent), m_open(std::move(open)), m_desk(new QObject)
{
    m_thread.setObjectName(QStringLiteral("logbook"));
    m_desk->moveToThread(&m_thread);
    m_thread.start();
}

Worker::~Worker()
{
    // Queued behind every job: the logbook is closed where it was opened, then the thread ends.
    QMetaObject::invokeMethod(
        m_desk,
        [this] {
            m_book.reset();
            m_thread.quit();
        },
        Qt::QueuedConnection);
    m_thread.wait();
    delete m_desk;
}

void Worker::post(std::function<void(Result<Logbook> &)> job)
{
    QMetaObject::invokeMethod(
        m_desk,
        [this, job = std::move(job)] {
            if (!m_book)
                m_book.emplace(m_open());
            job(*m_book);
        },
        Qt::QueuedConnection);
}

void Worker::runBeside(std::function<void()> job)
{
    QMetaObject::invokeMethod(m_desk, std::move(job), Qt::QueuedConnection);
}

void Worker::answerAtHome(std::function<void()> answer)
{
    QMetaObject::invokeMethod(this, std::move(answer), Qt::QueuedConnection);
}

} // namespace snugwalk
