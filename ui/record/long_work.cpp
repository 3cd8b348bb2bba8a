#include "ui/record/long_work.h"

namespace wardchalk::ui {

void LongWork::Handle::post(std::function<void()> what) {
  QMetaObject::invokeMethod(&work_, std::move(what), Qt::QueuedConnection);
}

void LongWork::Handle::tellProgress(qint64 done, qint64 all) {
  const int thousandths = all > 0 ? static_cast<int>(done * 1000 / all) : 0;
  if (thousandths == told_) return;
  told_ = thousandths;
  post([work = &work_, thousandths] { Q_EMIT work->progressed(thousandths); });
}

LongWork::~LongWork() {
  if (!thread_) return;
  cancelled_ = true;
  thread_->wait();
}

void LongWork::start(std::function<void(Handle&)> work) {
  Q_ASSERT(!isRunning());
  cancelled_ = false;
  thread_.reset(QThread::create([this, work = std::move(work)] {
    Handle handle(*this);
    work(handle);
    handle.post([this] {
      thread_->wait();
      thread_.reset();
      Q_EMIT finished(!cancelled_);
    });
  }));
  Q_EMIT started();
  thread_->start();
}

}  // namespace wardchalk::ui
