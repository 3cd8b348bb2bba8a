#include "core/practice/making/problem_names.h"

#include <array>

namespace wardchalk {

namespace {

constexpr std::array<std::string_view, 52> birds = {
    "Bittern",  "Brambling", "Bunting",   "Chiffchaff", "Chough",    "Corncrake", "Crossbill", "Curlew",
    "Dipper",   "Dotterel",  "Dunlin",    "Dunnock",    "Fieldfare", "Firecrest", "Gadwall",   "Gannet",
    "Garganey", "Godwit",    "Goldcrest", "Goosander",  "Guillemot", "Hoopoe",    "Jackdaw",   "Kittiwake",
    "Lapwing",  "Linnet",    "Magpie",    "Merganser",  "Nuthatch",  "Osprey",    "Phalarope", "Pintail",
    "Pipit",    "Plover",    "Pochard",   "Ptarmigan",  "Redpoll",   "Redshank",  "Redstart",  "Sanderling",
    "Shoveler", "Siskin",    "Skylark",   "Stonechat",  "Turnstone", "Wagtail",   "Waxwing",   "Wheatear",
    "Whimbrel", "Wigeon",    "Wren",      "Wryneck",
};

}  // namespace

std::span<const std::string_view> inventedMedicines() { return birds; }

}  // namespace wardchalk
