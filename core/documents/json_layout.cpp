#include "core/documents/json_layout.h"

#include "core/documents/json_text.h"
#include "core/documents/json_tree.h"

#include <limits>

namespace frontwright::documents {

namespace {

constexpr std::size_t columns = 100;
constexpr std::size_t indent = 2;

class Layout {
public:
    explicit Layout(const JsonTree& tree) : m_tree(tree) {}

    std::string text() {
        value(m_tree.root(), 0);
        m_out += '\n';
        return std::move(m_out);
    }

private:
    void value(NodeIndex i, std::size_t depth) {
        if (!m_tree.isContainer(i)) {
            m_out += m_tree.raw(i);
            return;
        }
        if (m_tree.childCount(i) == 0) {
            m_out += isObject(i) ? "{}" : "[]";
            return;
        }
        if (isPlain(i) && onOneLine(i))
            return;
        m_out += isObject(i) ? '{' : '[';
        for (NodeIndex child = m_tree.firstChild(i); child < m_tree.next(i);
             child = m_tree.next(child)) {
            m_out += child == m_tree.firstChild(i) ? "\n" : ",\n";
            m_lineBegin = m_out.size();
            m_out.append((depth + 1) * indent, ' ');
            name(i, child);
            value(child, depth + 1);
        }
        m_out += '\n';
        m_lineBegin = m_out.size();
        m_out.append(depth * indent, ' ');
        m_out += isObject(i) ? '}' : ']';
    }

    void name(NodeIndex parent, NodeIndex child) {
        if (!isObject(parent))
            return;
        appendQuoted(m_out, m_tree.name(child));
        m_out += ": ";
    }

    [[nodiscard]] bool isObject(NodeIndex i) const { return m_tree.kind(i) == JsonKind::Object; }

    /// Short enough to try, and nothing but values (an object) or no object at all (a list).
    [[nodiscard]] bool isPlain(NodeIndex i) const {
        if (m_tree.raw(i).size() > columns)
            return false;
        for (NodeIndex within = i + 1; within < m_tree.next(i); ++within)
            if (isObject(within) || (isObject(i) && m_tree.isContainer(within)))
                return false;
        return true;
    }

    /// Takes itself back where the line gets too long.
    bool onOneLine(NodeIndex i) {
        constexpr std::size_t comma = 1;
        const std::size_t before = m_out.size();
        flat(i);
        if (m_out.size() - m_lineBegin + comma <= columns)
            return true;
        m_out.resize(before);
        return false;
    }

    void flat(NodeIndex i) {
        if (!m_tree.isContainer(i)) {
            m_out += m_tree.raw(i);
            return;
        }
        m_out += isObject(i) ? "{ " : "[";
        for (NodeIndex child = m_tree.firstChild(i); child < m_tree.next(i);
             child = m_tree.next(child)) {
            if (child != m_tree.firstChild(i))
                m_out += ", ";
            name(i, child);
            flat(child);
        }
        m_out += isObject(i) ? " }" : "]";
    }

    const JsonTree& m_tree;
    std::string m_out;
    std::size_t m_lineBegin = 0;
};

} // namespace

std::string layOutJson(std::string_view json) {
    constexpr std::size_t any = std::numeric_limits<std::size_t>::max();
    const Result<JsonTree> tree = JsonTree::read(json, {any, any, any});
    return tree.ok() ? Layout(tree.value()).text() : std::string(json) + '\n';
}

} // namespace frontwright::documents
