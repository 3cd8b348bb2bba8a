#pragma once

#include <QObject>
#include <QThread>
#include <atomic>
#include <functional>
#include <memory>

namespace wardchalk::ui {

/// Work that takes long, done beside the window. It tells how far it is, hands on what it has, and stops when
/// it is cancelled.
class LongWork : public QObject {
  Q_OBJECT

 public:
  /// What the work itself sees of this; it may be used from the work's thread alone.
  class Handle {
   public:
    explicit Handle(LongWork& work) : work_(work) {}
    [[nodiscard]] bool isCancelled() const { return work_.cancelled_; }
    /// `what` is done in the thread of the window, after all that was posted before it.
    void post(std::function<void()> what);
    void tellProgress(qint64 done, qint64 all);

   private:
    LongWork& work_;
    int told_ = -1;
  };

  explicit LongWork(QObject* parent) : QObject(parent) {}
  ~LongWork() override;

  /// Only when nothing is running.
  void start(std::function<void(Handle&)> work);
  void cancel() { cancelled_ = true; }
  [[nodiscard]] bool isRunning() const { return thread_ != nullptr; }

 Q_SIGNALS:
  void started();
  void progressed(int thousandths);
  void finished(bool whole);  ///< false: it was cancelled

 private:
  std::atomic<bool> cancelled_ = false;
  std::unique_ptr<QThread> thread_;
};

}  // namespace wardchalk::ui
