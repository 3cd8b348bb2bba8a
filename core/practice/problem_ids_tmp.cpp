#include "core/practice/problem.h"
namespace wardchalk { std::string_view idOf(const Ask& ask) { return ask.step ? idOf(*ask.step) : std::string_view("verdict"); } }
