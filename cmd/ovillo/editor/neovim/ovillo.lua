-- Patterns in Neovim 0.7 and later: `ovillo lsp` is started for each file that ends in .ovillo. See ../README.md.

vim.api.nvim_create_autocmd({ 'BufRead', 'BufNewFile' }, {
  pattern = '*.ovillo',
  callback = function(args) vim.bo[args.buf].filetype = 'ovillo' end,
})

local started -- the client, where Neovim does not keep it itself

vim.api.nvim_create_autocmd('FileType', {
  pattern = 'ovillo',
  callback = function(args)
    vim.bo[args.buf].commentstring = '# %s'
    local config = {
      name = 'ovillo',
      cmd = { 'ovillo', 'lsp' },
      root_dir = vim.fn.fnamemodify(vim.api.nvim_buf_get_name(args.buf), ':h'),
    }
    if vim.lsp.start then -- 0.8 and later
      vim.lsp.start(config)
    else
      started = started or vim.lsp.start_client(config)
      vim.lsp.buf_attach_client(args.buf, started)
    end
    vim.bo[args.buf].omnifunc = 'v:lua.vim.lsp.omnifunc' -- words: Ctrl-X Ctrl-O
    if vim.lsp.inlay_hint then -- 0.10 and later: counts behind rows
      vim.lsp.inlay_hint.enable(true, { bufnr = args.buf })
    end
    local function key(keys, what) vim.keymap.set('n', keys, what, { buffer = args.buf }) end
    key('K', vim.lsp.buf.hover) -- what stands here
    key('gd', vim.lsp.buf.definition) -- where it was set
    key('gr', vim.lsp.buf.rename) -- another name for it
    key('ga', vim.lsp.buf.code_action) -- what would mend it
    key('gq', vim.lsp.buf.format or vim.lsp.buf.formatting) -- the usual shape
  end,
})
