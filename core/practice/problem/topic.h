#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace wardchalk {

/// What a practice problem is about; the list with stable ids is in topics.def.
enum class Topic : std::uint8_t {
#define WARDCHALK_TOPIC(name, id) name,
#include "core/practice/problem/topics.def"
#undef WARDCHALK_TOPIC
};

inline constexpr std::array topicIds = {
#define WARDCHALK_TOPIC(name, id) std::string_view(id),
#include "core/practice/problem/topics.def"
#undef WARDCHALK_TOPIC
};

/// The stable id that stands in files: "dose-by-bsa".
[[nodiscard]] constexpr std::string_view idOf(Topic topic) {
  return topicIds[static_cast<std::size_t>(topic)];
}

/// The topic with this id; none if there is none.
[[nodiscard]] constexpr std::optional<Topic> topicWithId(std::string_view id) {
  for (std::size_t i = 0; i < topicIds.size(); ++i)
    if (topicIds[i] == id) return static_cast<Topic>(i);
  return std::nullopt;
}

/// Every id with commas between, to be told when one is not known.
[[nodiscard]] inline std::string topicList() {
  std::string list;
  for (const std::string_view id : topicIds) list.append(list.empty() ? "" : ", ").append(id);
  return list;
}

}  // namespace wardchalk
