console.log('litrebar: every test passed.')
