// SPDX-License-Identifier: Apache-2.0
// The one thread that touches the logbook. Jobs go in, values come back on the thread that asked.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <utility>

#include <QObject>
#include <QPointer>
#include <QThread>

#include "logbook/logbook.hpp"

namespace snugwalk {

/// Jobs run in the order they are posted. Each sees the open logbook; when it could not be opened,
/// the job is not run and its answer is that error.
class Worker : public QObject {
    Q_OBJECT
public:
    explicit Worker(std::function<Result<Logbook>()> open, QObject *parent = nullptr);
    /// Waits for the jobs already posted: what was tapped is written.
    ~Worker() override;

    /// \param job Result<T>(Logbook &), on the worker's thread; holds values only.
    /// \param then void(Result<T>), on this object's thread; not called once `context` is gone.
    template <typename T, typename Job, typename Then>
    void run(QObject *context, Job job, Then then)
    {
        post([this, guard = QPointer<QObject>(context), job = std::move(job),
              then = std::move(then)](Result<Logbook> &book) mutable {
            auto answer = std::make_shared<Result<T>>(book ? job(*book) : Result<T>(book.error()));
            answerAtHome([guard, answer, then = std::move(then)]() mutable {
                if (guard)
                    then(std::move(*answer));
            });
        });
    }

    /// A job that needs no logbook, such as keeping the preferences.
    void runBeside(std::function<void()> job);

private:
    void post(std::function<void(Result<Logbook> &)> job);
    void answerAtHome(std::function<void()> answer);

    std::function<Result<Logbook>()> m_open;
    std::optional<Result<Logbook>> m_book; ///< touched on the worker's thread only
    QThread m_thread;
    QObject *m_desk; ///< lives in the thread: its event queue is the queue of jobs
};

} // namespace snugwalk
