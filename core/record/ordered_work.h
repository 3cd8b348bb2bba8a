#pragma once

#include <condition_variable>
#include <cstddef>
#include <deque>
#include <exception>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>
#include <utility>
#include <vector>

namespace wardchalk {

/// Works pieces by several threads and hands on their results in the order in which the pieces came. A few
/// pieces for each thread are kept waiting and no more, so that memory stays the same however many come.
/// Results are handed on in the thread that adds pieces; with one job there is no other thread.
template <typename Piece, typename Outcome>
class OrderedWork {
 public:
  using Work = std::function<Outcome(Piece)>;
  using Take = std::function<void(Outcome)>;

  OrderedWork(int jobs, Work work, Take take) : work_(std::move(work)), take_(std::move(take)) {
    if (jobs > 1) most_ = static_cast<std::size_t>(jobs) * 4;
    for (int i = 0; jobs > 1 && i < jobs; ++i) threads_.emplace_back([this] { run(); });
  }
  ~OrderedWork() {
    {
      const std::lock_guard lock(mutex_);
      closing_ = true;
    }
    changed_.notify_all();
    for (std::thread& thread : threads_) thread.join();
  }
  OrderedWork(const OrderedWork&) = delete;
  OrderedWork& operator=(const OrderedWork&) = delete;

  /// Takes in a piece; waits while too many are under way.
  void add(Piece piece) {
    if (threads_.empty()) return take_(work_(std::move(piece)));
    handOn(most_ - 1);
    {
      const std::lock_guard lock(mutex_);
      under_.emplace_back(std::move(piece));
    }
    changed_.notify_all();
  }

  /// Waits for what is under way and hands it on.
  void finish() { handOn(0); }

 private:
  struct Slot {
    explicit Slot(Piece one) : piece(std::move(one)) {}
    std::optional<Piece> piece;  // until a thread takes it
    std::optional<Outcome> outcome;
    std::exception_ptr failure;
    [[nodiscard]] bool isDone() const { return outcome || failure; }
  };

  /// Hands on what is done at the front, until no more than `rest` pieces are under way.
  void handOn(std::size_t rest) {
    std::unique_lock lock(mutex_);
    while (!under_.empty() && (under_.size() > rest || under_.front().isDone())) {
      changed_.wait(lock, [this] { return under_.front().isDone(); });
      Slot done = std::move(under_.front());
      under_.pop_front();
      lock.unlock();
      if (done.failure) std::rethrow_exception(done.failure);
      take_(std::move(*done.outcome));
      lock.lock();
    }
  }

  [[nodiscard]] Slot* waiting() {
    for (Slot& slot : under_)
      if (slot.piece) return &slot;
    return nullptr;
  }

  void run() {
    std::unique_lock lock(mutex_);
    while (true) {
      changed_.wait(lock, [this] { return closing_ || waiting(); });
      if (closing_) return;
      Slot* slot = waiting();  // stays where it is: the deque changes at its ends alone
      Piece piece = std::move(*std::exchange(slot->piece, std::nullopt));
      lock.unlock();
      std::optional<Outcome> outcome;
      std::exception_ptr failure;
      try {
        outcome = work_(std::move(piece));
      } catch (...) {  // told to the thread that waits for it
        failure = std::current_exception();
      }
      lock.lock();
      slot->outcome = std::move(outcome);
      slot->failure = failure;
      changed_.notify_all();
    }
  }

  Work work_;
  Take take_;
  std::size_t most_ = 1;
  std::mutex mutex_;
  std::condition_variable changed_;
  std::deque<Slot> under_;
  bool closing_ = false;
  std::vector<std::thread> threads_;
};

}  // namespace wardchalk
